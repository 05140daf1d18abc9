"use strict";

const assert = require("node:assert");
const { spawn } = require("node:child_process");
const fs = require("node:fs");
const Module = require("node:module");
const os = require("node:os");
const path = require("node:path");
const { test } = require("node:test");
const { pathToFileURL } = require("node:url");
const rpc = require("vscode-jsonrpc/node");

const { server } = require("../server");

const PLAN = `season 2026

site hill
  place          44 N, 72 W
  time zone      America/New_York
  last frost     18 May, 1 in 10 after 30 May
  first frost    27 September, 1 in 10 before 14 September

bed long
  size           20 m x 1.2 m

line amber
  is a           muskmellon
`;

function plan() {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "season-"));
  const file = path.join(folder, "plan.season");
  fs.writeFileSync(file, PLAN);
  return pathToFileURL(file).toString();
}

test("the server answers the extension's client", { timeout: 60_000 }, async () => {
  const { command, args } = server(process.env.SLIPDAY_COMMAND);
  const child = spawn(command, args, { stdio: ["pipe", "pipe", "inherit"] });
  const gone = new Promise((resolve) => child.on("exit", resolve));
  const connection = rpc.createMessageConnection(
    new rpc.StreamMessageReader(child.stdout),
    new rpc.StreamMessageWriter(child.stdin),
  );
  const told = new Promise((resolve) => {
    connection.onNotification("textDocument/publishDiagnostics", (p) => {
      if (p.diagnostics.length > 0) resolve(p);
    });
  });
  connection.listen();
  const hello = await connection.sendRequest("initialize", {
    processId: process.pid,
    rootUri: null,
    capabilities: {},
  });
  assert.equal(hello.serverInfo.name, "slipday");
  assert.ok(hello.capabilities.inlayHintProvider);
  await connection.sendNotification("initialized", {});
  const uri = plan();
  await connection.sendNotification("textDocument/didOpen", {
    textDocument: { uri, languageId: "season", version: 1, text: PLAN },
  });
  const { uri: about, diagnostics } = await told;
  assert.equal(about, uri);
  assert.equal(diagnostics[0].code, "unknown-name");
  assert.match(diagnostics[0].message, /Did you mean `muskmelon`\?/);
  const actions = await connection.sendRequest("textDocument/codeAction", {
    textDocument: { uri },
    range: diagnostics[0].range,
    context: { diagnostics },
  });
  assert.equal(actions[0].title, "Write `muskmelon`");
  await connection.sendRequest("shutdown");
  await connection.sendNotification("exit");
  assert.equal(await gone, 0);
});

test("the extension starts a client for season files and stops it", async () => {
  const made = [];
  class LanguageClient {
    constructor(...args) {
      made.push(args);
    }
    async start() {
      made.push("started");
    }
    async stop() {
      made.push("stopped");
    }
  }
  const vscode = {
    workspace: {
      getConfiguration: (section) => ({ get: (key) => `/set/${section}/${key}` }),
      createFileSystemWatcher: (glob) => glob,
    },
  };
  const load = Module._load;
  Module._load = (name, ...rest) =>
    name === "vscode"
      ? vscode
      : name === "vscode-languageclient/node"
        ? { LanguageClient }
        : load(name, ...rest);
  try {
    const extension = require("../extension");
    await extension.activate();
    await extension.deactivate();
  } finally {
    Module._load = load;
  }
  const [id, , started, options] = made[0];
  assert.equal(id, "slipday");
  assert.deepEqual(started, { command: "/set/slipday/command", args: ["language-server"] });
  assert.deepEqual(options.documentSelector, [
    { scheme: "file", language: "season" },
    { scheme: "untitled", language: "season" },
  ]);
  assert.deepEqual(made.slice(1), ["started", "stopped"]);
});

test("the grammar colours a plan", async () => {
  const oniguruma = require("vscode-oniguruma");
  const { Registry, parseRawGrammar, INITIAL } = require("vscode-textmate");
  const wasm = fs.readFileSync(require.resolve("vscode-oniguruma/release/onig.wasm"));
  await oniguruma.loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
  const file = path.join(__dirname, "../syntaxes/season.tmLanguage.json");
  const registry = new Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () => parseRawGrammar(fs.readFileSync(file, "utf8"), file),
  });
  const grammar = await registry.loadGrammar("source.season");
  const scope = (line, words) => {
    const { tokens } = grammar.tokenizeLine(line, INITIAL);
    const at = line.indexOf(words);
    return tokens.find((t) => t.startIndex <= at && at < t.endIndex).scopes.at(-1);
  };
  assert.equal(scope("grow tern-amber-f3", "grow"), "keyword.control.season");
  assert.equal(scope("  plants         12, 60 cm apart", "plants"), "support.type.property-name.season");
  assert.equal(scope("  seed parent    ropewalk", "seed parent"), "support.type.property-name.season");
  assert.equal(scope("  plants         12, 60 cm apart", "60"), "constant.numeric.season");
  assert.equal(scope('  because        "so # it is"', "so"), "string.quoted.double.season");
  assert.equal(scope("bed long   # a note", "a note"), "comment.line.number-sign.season");
  assert.equal(scope("2026-07-08 selfed amber plant 3, tag 3A", "2026"), "constant.other.date.season");
  assert.equal(scope("2026-07-08 first male flowers amber", "first male"), "entity.name.function.season");
});
