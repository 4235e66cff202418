/** The diagnostics that a client was told of, so that it is told again only of files where they changed. */
import type {Connection, Diagnostic, TextDocuments} from 'vscode-languageserver';
import type {TextDocument} from 'vscode-languageserver-textdocument';

/** Lives as long as the session. */
export class ToldDiagnostics {
  readonly #connection: Connection;
  readonly #documents: TextDocuments<TextDocument>;
  /** By address, what was sent last, as JSON. */
  readonly #sent = new Map<string, string>();
  /** By address, what was last given to a client that asks. */
  readonly #given = new Map<string, {readonly id: string; readonly text: string}>();

  constructor(connection: Connection, documents: TextDocuments<TextDocument>) {
    this.#connection = connection;
    this.#documents = documents;
  }

  /** Sends what changed, and takes off what stands in files that are not among these any longer. */
  send(byUri: ReadonlyMap<string, readonly Diagnostic[]>): void {
    const now = new Map(byUri);
    for (const uri of this.#sent.keys()) if (!now.has(uri)) now.set(uri, []);
    for (const [uri, diagnostics] of now) {
      const text = JSON.stringify(diagnostics);
      const version = this.#documents.get(uri)?.version;
      // Of a file in which nothing was found, and which nobody sees, the client need not even know.
      const isNews = diagnostics.length > 0 || this.#sent.has(uri) || version !== undefined;
      if (!isNews || this.#sent.get(uri) === text) continue;
      this.#sent.set(uri, text);
      // Where the client is gone, so is the one who would read it.
      void this.#connection
        .sendDiagnostics({
          uri,
          diagnostics: [...diagnostics],
          ...(version !== undefined && {version}),
        })
        .catch(() => undefined);
    }
  }

  /** A name for what a client that asks is given: the same for as long as it would be given the same. */
  idFor(uri: string, items: readonly Diagnostic[]): string {
    const text = JSON.stringify(items);
    const before = this.#given.get(uri);
    if (before?.text === text) return before.id;
    const id = String(Number(before?.id ?? 0) + 1);
    this.#given.set(uri, {id, text});
    return id;
  }
}
