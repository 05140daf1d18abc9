-- Opens a plan with a mistyped crop in Neovim's own client and says what it is told.
vim.cmd("luafile " .. vim.env.SLIPDAY_SETUP)
local function say(...)
  io.stdout:write(table.concat({ ... }, " "), "\n")
end
local function patiently(wanted)
  return vim.wait(60000, wanted, 50)
end

vim.cmd("edit " .. vim.env.SLIPDAY_PLAN)
say("filetype", vim.bo.filetype)
patiently(function()
  return #vim.diagnostic.get(0) > 0
end)
local wrong = vim.diagnostic.get(0)[1]
say("told", wrong.code, wrong.lnum + 1, (wrong.message:gsub("\n.*", "")))

local function ask(method, line, column, more)
  local params = {
    textDocument = { uri = vim.uri_from_bufnr(0) },
    position = { line = line - 1, character = column },
  }
  for key, value in pairs(more or {}) do
    params[key] = value
  end
  local answers = vim.lsp.buf_request_sync(0, method, params, 60000)
  for _, answer in pairs(answers or {}) do
    return answer.result
  end
end

local line = wrong.lnum + 1
local range = {
  start = { line = wrong.lnum, character = wrong.col },
  ["end"] = { line = wrong.lnum, character = wrong.col + 1 },
}
local mends = ask("textDocument/codeAction", line, 0, {
  range = range,
  context = { diagnostics = {} },
})
say("mend", mends[1].title)
vim.lsp.util.apply_workspace_edit(mends[1].edit, "utf-16")
say("line", vim.fn.getline(line))
say("mended", tostring(patiently(function()
  for _, d in ipairs(vim.diagnostic.get(0)) do
    if d.code == wrong.code then
      return false
    end
  end
  return true
end)))
local hover = ask("textDocument/hover", line, 18)
say("hover", (hover.contents.value:match("Cucumis %w+")))
local declared = ask("textDocument/definition", vim.fn.search("^  in "), 18)
say("declared in line", declared[1].range.start.line + 1)
local offered = ask("textDocument/completion", vim.fn.search("^  in "), 17)
say("offered", offered[1].label)
local edit = ask("textDocument/rename", vim.fn.search("^bed "), 5, { newName = "sunny" })
vim.lsp.util.apply_workspace_edit(edit, "utf-16")
say("renamed", vim.fn.getline(vim.fn.search("^  in ")))
vim.fn.setline(line, "   is a muskmelon")
if vim.lsp.buf.format then
  vim.lsp.buf.format({ async = false, timeout_ms = 60000 })
else
  vim.lsp.buf.formatting_sync(nil, 60000)
end
say("laid out", vim.fn.getline(line))
vim.cmd("qall!")
