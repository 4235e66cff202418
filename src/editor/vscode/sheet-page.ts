/** The sheet as a page of the editor: its HTML with one small script, which marks a step and tells of clicks. */
import * as z from 'zod';

const shape = z.object({
  title: z.string(),
  html: z.string(),
  steps: z.array(z.object({number: z.string(), line: z.number(), endLine: z.number()})),
});

/** What the server answers. */
export type Shown = z.infer<typeof shape>;

/** What comes from the server is held against its shape, as anything from another process is. */
export function isShown(value: unknown): value is Shown {
  return shape.safeParse(value).success;
}

/** The number of the step on a line, the innermost; between steps, of the one before; '' before the first. */
export function stepAtLine(steps: Shown['steps'], line: number): string {
  const on = steps.findLast((step) => step.line <= line && line <= step.endLine);
  return (on ?? steps.findLast((step) => step.line <= line))?.number ?? '';
}

/** The page's own policy forbids every script; this one is let in by a number that nobody can know. */
export function pageWithScript(html: string, number: string): string {
  const nonce = crypto.randomUUID();
  const script = `<script nonce="${nonce}">${SCRIPT}mark(${JSON.stringify(number).replaceAll('<', '\\u003c')});</script>`;
  return html
    .replace(POLICY, (policy) => `${policy}script-src 'nonce-${nonce}'; `)
    .replace('</head>', `<style>${STYLE}</style></head>`)
    .replace('</body>', () => `${script}</body>`);
}

/** Where the page's own policy begins. */
const POLICY = /http-equiv="Content-Security-Policy" content="/;

/** A sheet is paper, whatever the colours of the editor. */
const STYLE =
  'html{background:#fff;color:#000}tbody.here{outline:3px solid #b45309;outline-offset:-3px;scroll-margin-top:1rem}';

const SCRIPT = `
const editor = acquireVsCodeApi();
const rows = () => [...document.querySelectorAll('tbody.step')];
const numberOf = (row) => row.querySelector('th[scope=row]')?.textContent ?? '';
function mark(number) {
  for (const row of rows()) {
    const here = numberOf(row) === number;
    row.classList.toggle('here', here);
    if (here) row.scrollIntoView({block: 'start'});
  }
}
window.addEventListener('message', ({data}) => mark(data));
document.addEventListener('dblclick', ({target}) => {
  const row = target instanceof Element ? target.closest('tbody.step') : null;
  if (row) editor.postMessage(numberOf(row));
});
`;
