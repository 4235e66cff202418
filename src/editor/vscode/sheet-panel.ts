/** The live sheet: the printed page of the procedure in the editor, beside it, kept at the step of the cursor. */
import {Disposable, type TextEditor, ViewColumn, type WebviewPanel, window, workspace} from 'vscode';
import type {BaseLanguageClient} from 'vscode-languageclient';
import {isShown, pageWithScript, type Shown, stepAtLine} from './sheet-page.js';

/** Milliseconds after the last letter: a sheet is looked at, not typed into. */
const AFTER_TYPING = 250;

/** Lives as long as the extension; shows one sheet at a time. */
export class SheetPanel implements Disposable {
  readonly #client: BaseLanguageClient;
  readonly #listening: Disposable;
  #panel: WebviewPanel | undefined;
  #editor: TextEditor | undefined;
  #shown: Shown | undefined;
  #timer: NodeJS.Timeout | undefined;

  constructor(client: BaseLanguageClient) {
    this.#client = client;
    this.#listening = Disposable.from(
      window.onDidChangeActiveTextEditor((editor) => this.#turnTo(editor)),
      window.onDidChangeTextEditorSelection(({textEditor}) => this.#follow(textEditor)),
      workspace.onDidChangeTextDocument(({document}) => {
        if (this.#panel && isOfBook(document.languageId)) this.#later();
      }),
    );
  }

  /** For the procedure in the active editor. */
  async open(): Promise<void> {
    this.#editor = window.activeTextEditor ?? this.#editor;
    if (this.#panel === undefined) {
      const where = {viewColumn: ViewColumn.Beside, preserveFocus: true};
      const panel = window.createWebviewPanel('witnessMark.sheet', 'Sheet', where, {enableScripts: true});
      panel.onDidDispose(() => {
        this.#panel = undefined;
      });
      panel.webview.onDidReceiveMessage((number: unknown) => this.#goTo(number));
      this.#panel = panel;
    }
    this.#panel.reveal(ViewColumn.Beside, true);
    await this.#show();
  }

  dispose(): void {
    clearTimeout(this.#timer);
    this.#listening.dispose();
    this.#panel?.dispose();
  }

  #turnTo(editor: TextEditor | undefined): void {
    if (!this.#panel || editor?.document.languageId !== 'markdown' || editor === this.#editor) return;
    this.#editor = editor;
    this.#later();
  }

  #later(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#show(), AFTER_TYPING);
  }

  /** What is no procedure of a book leaves the sheet that is there. */
  async #show(): Promise<void> {
    const editor = this.#editor;
    if (editor === undefined) return;
    const uri = editor.document.uri.toString();
    const found: unknown = await this.#client.sendRequest('witnessMark/sheet', {textDocument: {uri}});
    if (!this.#panel || !isShown(found)) return;
    this.#shown = found;
    this.#panel.title = `Sheet: ${found.title}`;
    this.#panel.webview.html = pageWithScript(found.html, this.#numberAt(editor));
  }

  #follow(editor: TextEditor): void {
    if (
      !this.#panel ||
      editor !== this.#editor ||
      !workspace.getConfiguration('witnessMark').get('sheet.follow', true)
    ) {
      return;
    }
    void this.#panel.webview.postMessage(this.#numberAt(editor));
  }

  #numberAt({selection}: TextEditor): string {
    return stepAtLine(this.#shown?.steps ?? [], selection.active.line);
  }

  /** A step that was clicked in the sheet. */
  #goTo(number: unknown): void {
    const step = this.#shown?.steps.find((one) => one.number === number);
    if (step === undefined || this.#editor === undefined) return;
    const {document} = this.#editor;
    const selection = document.lineAt(Math.min(step.line, document.lineCount - 1)).range;
    void window.showTextDocument(document, {
      selection,
      viewColumn: this.#editor.viewColumn ?? ViewColumn.One,
    });
  }
}

function isOfBook(languageId: string): boolean {
  return languageId === 'markdown' || languageId === 'yaml';
}
