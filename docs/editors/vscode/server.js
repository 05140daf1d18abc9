"use strict";

/** How the server is started: the command the user set, or the one on the path. */
function server(command) {
  return { command: command || "slipday", args: ["language-server"] };
}

module.exports = { server };
