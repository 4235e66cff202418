-- What tests/real/neovim.ts runs inside neovim: open, forget a lock, see it, mend it, ask after an item.
local function wait_for(what, holds)
  if not vim.wait(60000, holds, 20) then
    print('never came: ' .. what)
    vim.cmd('cquit')
  end
  print(what)
end

vim.cmd('edit @FILE@')
vim.bo.filetype = 'markdown'
local buffer = vim.api.nvim_get_current_buf()
local client = vim.lsp.start_client({
  name = 'wmark',
  cmd = { '@NODE@', '@WMARK@', 'editor' },
  root_dir = vim.fn.getcwd(),
})
vim.lsp.buf_attach_client(buffer, client)
wait_for('the server answers', function()
  local found = vim.lsp.get_client_by_id(client)
  return found ~= nil and found.initialized
end)

local function find(words)
  for number, line in ipairs(vim.api.nvim_buf_get_lines(buffer, 0, -1, false)) do
    if line:find(words, 1, true) then
      return number - 1
    end
  end
end
local function errors()
  return vim.diagnostic.get(buffer, { severity = vim.diagnostic.severity.ERROR })
end

local lock = find('29. Wire the bolts')
vim.api.nvim_buf_set_lines(buffer, lock, lock + 2, true, {})
wait_for('a step deleted: left-unlocked', function()
  return #errors() == 1 and errors()[1].code == 'left-unlocked'
end)

local found = errors()[1]
local range = {
  start = { line = found.lnum, character = found.col },
  ['end'] = { line = found.lnum, character = found.col },
}
local function ask(method, more)
  local params = vim.tbl_extend('force', { textDocument = vim.lsp.util.make_text_document_params(buffer) }, more)
  local answers = vim.lsp.buf_request_sync(buffer, method, params, 60000)
  return answers[client].result
end

local actions = ask('textDocument/codeAction', { range = range, context = { diagnostics = {} } })
vim.lsp.util.apply_workspace_edit(actions[1].edit, 'utf-16')
wait_for('its fix applied: gone', function()
  return #errors() == 0
end)

local at = find('27. Lock the main cap bolts')
local column = vim.api.nvim_buf_get_lines(buffer, at, at + 1, true)[1]:find('main-cap-bolts', 1, true)
local hover = ask('textDocument/hover', { position = { line = at, character = column } })
assert(hover.contents.value:find('80 lbf·ft', 1, true), 'no torque in the hover')
print('hover tells the torque')
vim.lsp.stop_client(client)
print('all well')
vim.cmd('qall!')
