"use strict";

const vscode = require("vscode");
const { LanguageClient } = require("vscode-languageclient/node");
const { server } = require("./server");

let client;

async function activate() {
  const command = vscode.workspace.getConfiguration("slipday").get("command");
  client = new LanguageClient("slipday", "Slipday", server(command), {
    documentSelector: [
      { scheme: "file", language: "season" },
      { scheme: "untitled", language: "season" },
    ],
    synchronize: { fileEvents: vscode.workspace.createFileSystemWatcher("**/*.{season,csv,dly}") },
  });
  await client.start();
}

async function deactivate() {
  await client?.stop();
}

module.exports = { activate, deactivate };
