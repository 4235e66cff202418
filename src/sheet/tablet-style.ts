/**
 * How a sheet looks where it is filled in on a screen: targets of 44 px for gloved hands (WCAG 2.2, 2.5.5), verdicts
 * told by words and frames as well as shape. On paper the controls are gone and what was filled in stands there.
 */
export const TABLET_STYLE = `
button.box { padding: 0; font: inherit; color: inherit; position: relative; cursor: pointer; appearance: none; }
button.box[aria-checked="true"]::after { content: ""; position: absolute; left: 34%; top: 10%; width: 28%; height: 58%; border: solid var(--ink); border-width: 0 1.1mm 1.1mm 0; transform: rotate(42deg); }
button.box.bearing { font-size: 10pt; text-align: left; padding: 0.3mm 0.8mm; line-height: 1; vertical-align: middle; }
input.blank, input.line, input.written { font: 700 11.5pt/1.2 var(--sans); color: inherit; border-radius: 0; padding: 0 1mm; margin: 0; background: #fff; }
input.line { border: 0; border-bottom: 0.8pt solid var(--ink); }
input.written { width: 100%; border: 0; border-bottom: 0.8pt solid var(--rule); }
.read { display: inline-flex; flex-direction: column; align-items: flex-start; gap: 0.6mm; vertical-align: middle; }
.readings .read { width: 25mm; }
.readings.twice .read { width: 20mm; }
.verdict { display: inline-flex; align-items: center; gap: 1mm; width: max-content; max-width: 40mm; font-size: 10pt; line-height: 1.15; white-space: normal; }
.readings.twice .verdict { max-width: 28mm; }
.verdict:empty { display: none; }
.verdict svg { width: 4mm; height: 4mm; flex: none; }
.verdict.near { border: 1pt dashed var(--ink); padding: 0.4mm 1mm; }
.verdict.out, .verdict.refused { border: 1.8pt solid var(--ink); padding: 0.4mm 1mm; font-weight: 700; }
.lines .read { width: 100%; }
.initials { overflow-wrap: anywhere; }
.stamp { display: block; font-weight: 700; }
.stamp-time { display: block; font-size: 10pt; line-height: 1.15; }
.line[data-by], .line[data-at] { font-weight: 700; text-align: center; overflow: hidden; white-space: nowrap; font-size: 10pt; line-height: 8mm; }
button.sign { font: 700 11.5pt/1.2 var(--sans); }
.t-bar, .t-progress, .t-fold { display: none; }
@media screen {
  html { scroll-padding-bottom: 10mm; }
  button, .t-bar input, dialog input { min-height: 44px; min-width: 44px; font: inherit; font-size: 12pt; color: inherit; }
  .t-bar button, dialog button, .t-fold button, button.sign { padding: 1mm 3mm; background: #fff; border: 1.1pt solid var(--ink); border-radius: 1mm; cursor: pointer; }
  button.box, button.box.small, .rows > tbody.sub button.box, button.box.bearing { width: 44px; height: 44px; }
  .rows .c-box { width: 16mm; }
  input.blank, input.line, input.written { min-height: 44px; }
  input.blank { width: 27mm; }
  .readings .read { width: 27mm; }
  .readings.twice input.blank, .readings.twice .read { width: 22mm; }
  .rows .c-values { width: 82mm; }
  button.sign { flex: 1; text-align: left; }
  .box:focus-visible, input:focus-visible, button:focus-visible, a:focus-visible { outline: 3px solid #174a86; outline-offset: 2px; }
  .t-bar { display: block; position: sticky; top: 0; z-index: 1; margin: -12mm -12mm 8mm -15mm; padding: 2mm 12mm 2mm 15mm; background: #fff; border-bottom: 1.2pt solid var(--ink); }
  .t-bar > div { display: flex; flex-wrap: wrap; gap: 1.5mm 2mm; align-items: center; }
  .t-bar p { margin: 1mm 0 0; }
  .t-who { font-weight: 700; overflow-wrap: anywhere; }
  .t-bar .t-progress { margin: 0 auto 0 2mm; }
  .t-alarm { border: 1.8pt solid var(--ink); padding: 1mm 2mm; font-weight: 700; }
  .t-alarm:empty { display: none; }
  .t-says { min-height: 1.4em; font-weight: 700; }
  .t-progress { display: flex; gap: 3mm; align-items: center; margin: 0 0 2mm; }
  .t-progress progress, .t-bar progress { width: 40mm; height: 4mm; accent-color: var(--ink); }
  .t-fold { display: block; margin: 1.5mm 0 0; }
  tbody[hidden] { display: none; }
  dialog { border: 1.8pt solid var(--ink); padding: 5mm; max-width: 120mm; font: inherit; color: inherit; }
  dialog h2 { margin: 0 0 2mm; }
  dialog label { display: block; font-weight: 700; }
  dialog input { width: 100%; padding: 0 2mm; border: 1.1pt solid var(--ink); border-radius: 1mm; background: #fff; }
  dialog .t-buttons { display: flex; gap: 3mm; margin-top: 4mm; }
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
@media screen and (max-width: 560px) {
  .t-bar { position: static; }
}
@media print {
  tbody[hidden] { display: table-row-group !important; }
  button.sign { border: 0; border-bottom: 0.8pt solid var(--ink); background: none; padding: 0; flex: 1; min-height: 8mm; text-align: left; }
  button.sign.unsigned { font-size: 0; }
  dialog { display: none; }
}
`;
