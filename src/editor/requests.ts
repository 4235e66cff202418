/** The protocol's requests about a file, each handed to the function that answers it. */
import {
  type CompletionItem,
  type Connection,
  type DocumentHighlight,
  type Position,
  ResponseError,
  SemanticTokensBuilder,
  type TextEdit,
} from 'vscode-languageserver';
import type {Procedure} from '../procedure/model.js';
import {tidyEdits} from '../procedure/tidy/edits.js';
import {positionAt, type Source, type Span, source} from '../text/source.js';
import {codeActions} from './code-actions.js';
import {type Coloured, colours, TOKEN_TYPES} from './colours.js';
import {procedureOffers} from './completion.js';
import {
  locationOf,
  NOWHERE,
  offsetOf,
  positionOf,
  rangeOf,
  spanIn,
  textEditOf,
  workspaceEditOf,
} from './convert.js';
import {folding} from './folding.js';
import {hover} from './hover.js';
import {inlayHints} from './inlay-hints.js';
import {definitions, lookUp} from './lookup.js';
import type {Offer} from './offer.js';
import {procedureOutline, workspaceSymbols, yamlOutline} from './outline.js';
import {renamable, rename} from './rename.js';
import type {Asked, Session} from './session.js';
import {yamlOffers} from './yaml-offers.js';

/** A request that failed for a reason that the user should read. */
const FAILED = -32803;

type Token = {readonly isCancellationRequested: boolean};

/** What is asked about a place in a file of a book. */
interface Here extends Asked {
  readonly source: Source;
  readonly offset: number;
}

export function bindRequests(connection: Connection, session: Session): void {
  bindNames(connection, session);
  bindSight(connection, session);
  const {addresses} = session;

  connection.onCompletion(async ({textDocument: {uri}, position}) => offers(session, uri, position));

  connection.onHover(async ({textDocument: {uri}, position}, token) => {
    const here = await hereAt(session, uri, position, token);
    const told = here && hover(here.view, here.file, here.offset);
    return (
      told && {contents: {kind: 'markdown', value: told.markdown}, range: rangeOf(here.source, told.span)}
    );
  });

  connection.onCodeAction(async ({textDocument: {uri}, range, context: {only}}, token) => {
    if (only !== undefined && !only.some((kind) => kind === '' || kind === 'quickfix')) return [];
    const here = await hereAt(session, uri, range.start, token);
    return here && codeActions(here.view, here.file, spanIn(here.source, range), addresses);
  });

  connection.onDocumentFormatting(async ({textDocument: {uri}}, token) => {
    const here = await hereAt(session, uri, NOWHERE.start, token);
    return here && tidied(here, {start: 0, end: here.source.text.length});
  });

  connection.onDocumentRangeFormatting(async ({textDocument: {uri}, range}, token) => {
    const here = await hereAt(session, uri, range.start, token);
    return here && tidied(here, spanIn(here.source, range));
  });

  connection.onWorkspaceSymbol(async ({query}) => {
    const {views} = await session.desk.settled();
    return workspaceSymbols(views, query, addresses);
  });
}

function bindNames(connection: Connection, session: Session): void {
  const {addresses} = session;

  connection.onDefinition(async ({textDocument: {uri}, position}, token) => {
    const here = await hereAt(session, uri, position, token);
    const found = here && lookUp(here.view, here.views, here.file, here.offset);
    return found && definitions(found, here.view).map((where) => locationOf(where, textsOf(here), addresses));
  });

  connection.onReferences(async ({textDocument: {uri}, position, context}, token) => {
    const here = await hereAt(session, uri, position, token);
    const found = here && lookUp(here.view, here.views, here.file, here.offset);
    if (here === undefined || found === undefined) return null;
    return found.all
      .filter(({gives}) => context.includeDeclaration || !gives)
      .map(({where}) => locationOf(where, textsOf(here), addresses));
  });

  connection.onDocumentHighlight(async ({textDocument: {uri}, position}, token) => {
    const here = await hereAt(session, uri, position, token);
    const found = here && lookUp(here.view, [], here.file, here.offset);
    if (here === undefined || found === undefined) return null;
    return found.all
      .filter(({where}) => where.file === here.file)
      .map(
        ({where, gives}): DocumentHighlight => ({
          range: rangeOf(here.source, where.span),
          kind: gives ? 3 : 2,
        }),
      );
  });

  connection.onPrepareRename(async ({textDocument: {uri}, position}, token) => {
    const here = await hereAt(session, uri, position, token);
    const found = here && renamable(here.view, here.views, here.file, here.offset);
    return found && {range: rangeOf(here.source, found.where.span), placeholder: found.id};
  });

  connection.onRenameRequest(async ({textDocument: {uri}, position, newName}, token) => {
    const here = await hereAt(session, uri, position, token);
    if (here === undefined) return null;
    const renaming = rename(here.view, here.views, here, newName);
    if (!renaming.ok) throw new ResponseError(FAILED, renaming.says);
    return workspaceEditOf(renaming.edits, textsOf(here), addresses);
  });
}

/** What the client draws: outline, folds, colours and hints. */
function bindSight(connection: Connection, session: Session): void {
  connection.onDocumentSymbol(async ({textDocument: {uri}}, token) => {
    const here = await hereAt(session, uri, NOWHERE.start, token);
    if (here === undefined) return null;
    const procedure = here.view.procedure(here.file);
    return procedure ? procedureOutline(procedure) : yamlOutline(here.source);
  });

  connection.onFoldingRanges(async ({textDocument: {uri}}, token) => {
    const procedure = await procedureAt(session, uri, token);
    return procedure && folding(procedure);
  });

  connection.languages.semanticTokens.on(async ({textDocument: {uri}}, token) => {
    const procedure = await procedureAt(session, uri, token);
    return tokensOf(procedure, procedure ? colours(procedure) : []);
  });

  connection.languages.semanticTokens.onRange(async ({textDocument: {uri}, range}, token) => {
    const procedure = await procedureAt(session, uri, token);
    return tokensOf(procedure, procedure ? colours(procedure, spanIn(procedure.source, range)) : []);
  });

  connection.languages.inlayHint.on(async ({textDocument: {uri}, range}, token) => {
    const here = await hereAt(session, uri, range.start, token);
    const procedure = here?.view.procedure(here.file);
    if (here === undefined || procedure === undefined || !session.settings.inlayHints) return [];
    const {source: from} = procedure;
    return inlayHints(procedure, here.view.spec, spanIn(from, range)).map((hint) => ({
      position: positionOf(from, hint.offset),
      label: hint.label,
      tooltip: hint.tooltip,
      ...(hint.insert !== undefined && {
        textEdits: [textEditOf(from, {span: {start: hint.offset, end: hint.offset}, text: hint.insert})],
      }),
    }));
  });
}

async function hereAt(
  session: Session,
  uri: string,
  position: Position,
  token: Token,
): Promise<Here | undefined> {
  const asked = await session.asked(uri, token);
  const from = asked?.view.texts.get(asked.file);
  return asked && from && {...asked, source: from, offset: offsetOf(from, position)};
}

async function procedureAt(session: Session, uri: string, token: Token): Promise<Procedure | undefined> {
  const asked = await session.asked(uri, token);
  return asked?.view.procedure(asked.file);
}

/** As `wmark tidy` would write the part of the procedure. */
function tidied({view, file, source: from}: Here, part: Span): TextEdit[] {
  const procedure = view.procedure(file);
  const edits = procedure ? tidyEdits(procedure, view.spec) : [];
  return edits
    .filter(({span}) => part.start <= span.start && span.end <= part.end)
    .map((edit) => textEditOf(from, edit));
}

/** The texts of all books on the desk: a name may be given in one that shares the file. */
function textsOf({view, views}: Asked): ReadonlyMap<string, Source> {
  return new Map([...views.flatMap(({texts}) => [...texts]), ...view.texts]);
}

async function offers(session: Session, uri: string, position: Position): Promise<CompletionItem[]> {
  const document = session.documents.get(uri);
  const asked = document && (await session.askedSoon(uri));
  if (document === undefined || asked === undefined) return [];
  // The text as it is now, which may be a word newer than the book.
  const now = source(asked.file, document.getText());
  const typing = {file: asked.file, text: now.text, offset: offsetOf(now, position)};
  const found = asked.view.procedure(asked.file)
    ? procedureOffers(asked.view, typing)
    : yamlOffers(asked.view.spec, typing);
  return found.map((offer, index) => itemOf(offer, index, now));
}

/** Kinds of completion in the protocol. */
const KIND = {verb: 3, item: 6, place: 20, clause: 14, value: 12, word: 12} as const;

function itemOf(
  {label, kind, insert, span, detail, rank}: Offer,
  index: number,
  now: Source,
): CompletionItem {
  return {
    label,
    kind: KIND[kind],
    // Clients sort by letters, and would put the nearest choice behind others.
    sortText: `${rank}${String(index).padStart(6, '0')}`,
    // What is typed of a value holds spaces, which clients do not take for part of a word.
    filterText: now.text.slice(span.start, span.end).includes(' ') ? insert : label,
    textEdit: textEditOf(now, {span, text: insert}),
    ...(detail !== undefined && {detail}),
  };
}

function tokensOf(procedure: Procedure | undefined, coloured: readonly Coloured[]): {data: number[]} {
  const builder = new SemanticTokensBuilder();
  for (const {span, type} of procedure ? coloured : []) {
    const {line, column} = procedure ? positionAt(procedure.source, span.start) : {line: 1, column: 1};
    builder.push(line - 1, column - 1, span.end - span.start, TOKEN_TYPES.indexOf(type), 0);
  }
  return {data: builder.build().data};
}
