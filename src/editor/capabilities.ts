/** What the server can do, as it says on the start. */
import type {ClientCapabilities, ServerCapabilities} from 'vscode-languageserver';
import {TOKEN_TYPES} from './colours.js';
import type {Refresh} from './session.js';

/** The server's own command: what is left undone in the book of a file. */
export const UNDONE_COMMAND = 'wmark.undone';

export function capabilities(pull: boolean): ServerCapabilities {
  return {
    // Incremental: 2 in the protocol.
    textDocumentSync: {openClose: true, change: 2, save: {includeText: false}},
    completionProvider: {triggerCharacters: ['`', ':', ' ', ',', '[']},
    hoverProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    renameProvider: {prepareProvider: true},
    documentSymbolProvider: true,
    workspaceSymbolProvider: true,
    codeActionProvider: {codeActionKinds: ['quickfix']},
    semanticTokensProvider: {
      legend: {tokenTypes: [...TOKEN_TYPES], tokenModifiers: []},
      full: true,
      range: true,
    },
    inlayHintProvider: true,
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    foldingRangeProvider: true,
    codeLensProvider: {},
    executeCommandProvider: {commands: [UNDONE_COMMAND]},
    ...(pull && {
      diagnosticProvider: {identifier: 'wmark', interFileDependencies: true, workspaceDiagnostics: true},
    }),
    workspace: {workspaceFolders: {supported: true, changeNotifications: false}},
  };
}

export function refreshesOf({workspace}: ClientCapabilities): readonly Refresh[] {
  return [
    ...(workspace?.diagnostics?.refreshSupport ? (['diagnostics'] as const) : []),
    ...(workspace?.codeLens?.refreshSupport ? (['codeLens'] as const) : []),
    ...(workspace?.inlayHint?.refreshSupport ? (['inlayHint'] as const) : []),
  ];
}
