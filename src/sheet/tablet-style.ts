/**
 * How a sheet looks where it is filled in on a screen: targets of 44 px for gloved hands (WCAG 2.2, 2.5.5), verdicts
 * told by words and frames as well as shape. On paper the controls are gone and what was filled in stands there.
 */
export const TABLET_STYLE = `
button.box { padding: 0; font: inherit; color: inherit; position: relative; cursor: pointer; appearance: none; }
button.box[aria-checked="true"]::after { content: ""; position: absolute; left: 34%; top: 10%; width: 28%; height: 58%; border: solid var(--ink); border-width: 0 1.1mm 1.1mm 0; transform: rotate(42deg); }
button.box.bearing[aria-checked="true"]::after { left: 50%; top: 24%; }
button.box[data-before]::before { content: attr(data-before); position: absolute; right: 0.3mm; bottom: 0.2mm; font: 700 10pt/1 var(--sans); }
button.box.bearing { font-size: 10pt; text-align: left; padding: 0.3mm 0.8mm; line-height: 1; vertical-align: middle; }
input.blank, input.line, input.written { font: 700 11.5pt/1.2 var(--sans); color: inherit; border-radius: 0; padding: 0 1mm; margin: 0; background: #fff; }
input.line { border: 0; border-bottom: 0.8pt solid var(--ink); }
input.written { width: 100%; border: 0; border-bottom: 0.8pt solid var(--rule); }
.read { display: inline-flex; flex-direction: column; align-items: flex-start; gap: 0.8mm; vertical-align: middle; max-width: 100%; }
.field { display: inline-flex; align-items: center; white-space: nowrap; max-width: 100%; }
.verdict { display: inline-flex; align-items: center; gap: 1.2mm; max-width: 62mm; font-size: 11pt; line-height: 1.15; white-space: normal; }
.verdict:empty, .rounds:empty, .stop:empty { display: none; }
.verdict svg { width: 4mm; height: 4mm; flex: none; }
.verdict.in { font-weight: 700; }
.verdict.near { border: 1pt dashed var(--ink); padding: 0.4mm 1mm; }
.verdict.out, .verdict.refused { border: 1.8pt solid var(--ink); padding: 0.6mm 1.4mm; font-weight: 800; font-size: 13pt; }
.verdict.out svg { width: 7mm; height: 7mm; }
.rounds { white-space: normal; }
span.blank { font: 700 11.5pt/7mm var(--sans); text-align: center; }
.by-round td { vertical-align: top; }
.paper.stamp, .paper.stamp-time { max-width: 38mm; margin-top: 0.6mm; }
.stop { margin-top: 2mm; break-inside: avoid; }
.stop.standing { border: 3.4pt solid var(--ink); padding: 2mm 3mm; background: #fff; }
.stop p { margin: 0 0 1.5mm; }
.stop .stop-title { display: flex; align-items: center; gap: 3mm; font-size: 20pt; line-height: 1.1; font-weight: 800; }
.stop .stop-title svg { width: 11mm; height: 11mm; flex: none; }
.stop .stop-reading { display: flex; flex-wrap: wrap; gap: 1.5mm 3mm; align-items: center; }
.stop .stop-accepted { border-left: 1.6mm solid var(--ink); padding-left: 2mm; }
.lines .read { width: 100%; }
.initials { overflow-wrap: anywhere; }
.stamp { display: block; font-weight: 700; }
.stamp-round { display: block; font-weight: 700; font-size: 10pt; overflow-wrap: normal; border-top: 0.5pt solid var(--rule); }
.stamp-time { display: block; font-size: 10pt; line-height: 1.15; }
.line[data-by], .line[data-at] { font-weight: 700; text-align: center; white-space: nowrap; font-size: 10pt; line-height: 8mm; }
.line[data-at] { font-weight: 400; }
button.sign { font: 700 11.5pt/1.2 var(--sans); }
.t-bar, .t-progress, .t-fold { display: none; }
@media screen {
  html { scroll-padding-bottom: 10mm; }
  button, .t-bar input, dialog input { min-height: 44px; min-width: 44px; font: inherit; font-size: 12pt; color: inherit; }
  .t-bar button, .t-bar summary, dialog button, .t-fold button, .stop button, .field button, button.sign { padding: 1mm 3mm; background: #fff; border: 1.1pt solid var(--ink); border-radius: 1mm; cursor: pointer; }
  button.box, button.box.small, .rows > tbody.sub button.box, button.box.bearing { width: 44px; height: 44px; }
  .rows .c-box { width: 16mm; }
  input.blank, input.line, input.written { min-height: 44px; }
  input.blank { width: 27mm; }
  .rows .c-values { width: 82mm; }
  button.sign { flex: 1; text-align: left; }
  /* A date and time of day have the width below their label, and the button its own. */
  .lines dd:has([data-now]) { flex: 1 1 100%; }
  .lines .field { width: 100%; gap: 1.5mm; }
  .field button { flex: none; }
  .box:focus-visible, input:focus-visible, button:focus-visible, a:focus-visible { outline: 3px solid #174a86; outline-offset: 2px; }
  .t-bar { display: block; position: sticky; top: 0; z-index: 1; margin: -12mm -12mm 8mm -15mm; padding: 2mm 12mm 2mm 15mm; background: #fff; border-bottom: 1.2pt solid var(--ink); }
  .t-bar > div { display: flex; flex-wrap: wrap; gap: 1.5mm 2mm; align-items: center; }
  .t-bar p { margin: 1mm 0 0; }
  .t-who { font-weight: 700; width: 50mm; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
  .t-more { margin-left: auto; position: relative; }
  .t-bar summary { display: flex; align-items: center; min-height: 44px; font-size: 12pt; }
  .t-more > div { position: absolute; right: 0; top: 100%; z-index: 2; display: flex; flex-direction: column; gap: 6mm; padding: 3mm; background: #fff; border: 1.1pt solid var(--ink); white-space: nowrap; }
  .t-bar .t-progress { margin: 0 2mm; min-width: 62mm; }
  .t-alarm { border: 1.8pt solid var(--ink); padding: 1mm 2mm; font-weight: 700; }
  .t-alarm:empty { display: none; }
  .t-says { min-height: 1.4em; font-weight: 700; }
  .t-progress { display: flex; gap: 3mm; align-items: center; margin: 0 0 2mm; }
  .t-progress progress, .t-bar progress { width: 26mm; height: 4mm; accent-color: var(--ink); }
  .t-fold { display: block; margin: 1.5mm 0 0; }
  tbody[hidden] { display: none; }
  /* Blanks of later rounds are for paper: here each round has boxes of its own. */
  .later, .paper { display: none; }
  dialog { border: 1.8pt solid var(--ink); padding: 5mm; max-width: 120mm; font: inherit; color: inherit; }
  dialog h2 { margin: 0 0 2mm; }
  dialog label { display: block; font-weight: 700; margin-top: 2mm; }
  dialog input { width: 100%; padding: 0 2mm; border: 1.1pt solid var(--ink); border-radius: 1mm; background: #fff; }
  dialog .t-buttons { display: flex; flex-wrap: wrap; gap: 3mm 8mm; margin-top: 4mm; }
  dialog .t-fault { font-weight: 700; }
  dialog::backdrop { background: rgb(0 0 0 / 55%); }
}
@media screen and (max-height: 700px) {
  .t-bar { position: static; }
}
@media screen and (max-width: 760px) {
  .t-bar { margin: -5mm -5mm 5mm; padding: 2mm 5mm; }
  .c-values, .rows .c-values { width: 50%; }
}
@media screen and (max-width: 640px) {
  .t-bar { margin: -3mm -3mm 4mm; padding: 1.5mm 3mm; }
  .t-who { width: auto; flex: 1; }
  .t-bar .t-progress { min-width: 0; margin: 0; flex: 1 1 100%; }
  .t-bar > div { gap: 1mm 1.5mm; }
  .t-bar button, .t-bar summary { padding: 0 2mm; font-size: 11pt; }
  .t-says { min-height: 0; }
}
@media print {
  tbody[hidden] { display: table-row-group !important; }
  button.sign { border: 0; border-bottom: 0.8pt solid var(--ink); background: none; padding: 0; flex: 1; min-height: 8mm; text-align: left; }
  button.sign.unsigned { font-size: 0; }
  dialog, .stop button, .field button, .by-round .read { display: none; }
}
`;
