/** Requests that go beyond reading a file: lenses and what they lead to, the live sheet, diagnostics on demand. */
import type {CodeLens, Connection, DocumentDiagnosticReport} from 'vscode-languageserver';
import {UNDONE_COMMAND} from './capabilities.js';
import {locationOf, NOWHERE} from './convert.js';
import {type Lens, lenses, type Undone} from './lenses.js';
import {liveSheet} from './live-sheet.js';
import type {Asked, Session} from './session.js';
import type {Start} from './settings.js';

/** Asks for the sheet of `textDocument.uri`; nothing for a file that is no procedure of a book. */
const SHEET_REQUEST = 'witnessMark/sheet';

export function bindOwnRequests(connection: Connection, session: Session, {undoneCommand}: Start): void {
  connection.onCodeLens(async ({textDocument: {uri}}, token) => {
    const asked = await session.asked(uri, token);
    const procedure = asked?.view.procedure(asked.file);
    if (asked === undefined || procedure === undefined || !session.settings.codeLens) return [];
    return lenses(asked.view, procedure).map((lens) =>
      codeLensOf(lens, uri, undoneCommand ?? UNDONE_COMMAND),
    );
  });

  connection.onExecuteCommand(async ({command, arguments: [uri] = []}) => {
    if (command !== UNDONE_COMMAND || typeof uri !== 'string') return null;
    const undone = await undoneOf(session, uri);
    // A client without a command of its own has no list to show.
    if (undoneCommand === undefined) connection.window.showInformationMessage(inWords(undone));
    return undone;
  });

  connection.onRequest(SHEET_REQUEST, async (params: unknown) => {
    const uri = uriIn(params);
    const asked = uri === undefined ? undefined : await session.asked(uri);
    return (asked && (await liveSheet(asked.view, asked.file))) ?? null;
  });
}

/** For clients that ask for diagnostics. */
export function bindPull(connection: Connection, session: Session): void {
  const {diagnostics} = connection.languages;
  diagnostics.on(async ({textDocument: {uri}, previousResultId}): Promise<DocumentDiagnosticReport> => {
    const {id, items} = await session.pulled(uri);
    return id === previousResultId
      ? {kind: 'unchanged', resultId: id}
      : {kind: 'full', resultId: id, items: [...items]};
  });
  diagnostics.onWorkspace(async ({previousResultIds}) => {
    const before = new Map(previousResultIds.map(({uri, value}) => [uri, value]));
    const all = await session.pulledAll();
    return {
      items: all.map(({uri, id, items}) =>
        before.get(uri) === id
          ? {kind: 'unchanged', uri, version: null, resultId: id}
          : {kind: 'full', uri, version: null, resultId: id, items: [...items]},
      ),
    };
  });
}

function codeLensOf({title, undone}: Lens, uri: string, command: string): CodeLens {
  return {range: NOWHERE, command: {title, command: undone.length === 0 ? '' : command, arguments: [uri]}};
}

interface UndoneThere extends Undone {
  readonly location: ReturnType<typeof locationOf>;
}

async function undoneOf(session: Session, uri: string): Promise<readonly UndoneThere[]> {
  const asked: Asked | undefined = await session.asked(uri);
  const procedure = asked?.view.procedure(asked.file);
  if (asked === undefined || procedure === undefined) return [];
  return lenses(asked.view, procedure)
    .flatMap(({undone}) => undone)
    .map((one) => ({...one, location: locationOf(one.where, asked.view.texts, session.addresses)}));
}

const MOST_SAID = 10;

function inWords(undone: readonly Undone[]): string {
  if (undone.length === 0) return 'Nothing is left undone in this book.';
  const said = undone
    .slice(0, MOST_SAID)
    .map(({item, place, says}) => `${item}${place && `[${place}]`} ${says}`);
  const more = undone.length - said.length;
  return `Left undone: ${said.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`;
}

function uriIn(params: unknown): string | undefined {
  if (typeof params !== 'object' || params === null || !('textDocument' in params)) return undefined;
  const {textDocument} = params;
  const isNamed = typeof textDocument === 'object' && textDocument !== null && 'uri' in textDocument;
  return isNamed && typeof textDocument.uri === 'string' ? textDocument.uri : undefined;
}
