/** How a build report looks on screen and paper: black on white, nothing said by colour alone. */
export const STYLE = `
:root { --ink: #111; --rule: #6b6b6b; }
* { box-sizing: border-box; }
html { background: #e4e3de; color: var(--ink); font: 11pt/1.36 "Noto Sans", "Open Sans", "Segoe UI", "Helvetica Neue", "DejaVu Sans", Verdana, Arial, sans-serif; font-variant-numeric: tabular-nums slashed-zero; }
body { margin: 0 auto; max-width: 210mm; padding: 12mm 14mm 16mm; background: #fff; overflow-wrap: break-word; }
h1 { font-size: 21pt; margin: 0 0 4mm; }
h2 { font-size: 16pt; margin: 9mm 0 2mm; border-top: 1.2pt solid var(--ink); padding-top: 3mm; }
h3 { font-size: 13pt; margin: 6mm 0 1.5mm; }
h4 { font-size: 11pt; margin: 4mm 0 1mm; }
h1, h2, h3, h4 { line-height: 1.2; break-after: avoid; }
p { margin: 0 0 2mm; }
a { color: inherit; }
.key { font-size: 10pt; margin-top: 3mm; }
.where { font-size: 10pt; margin: 0 0 1mm; break-after: avoid; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; font-size: 10pt; }
thead { display: table-header-group; }
th, td { text-align: left; vertical-align: top; padding: 1mm 2mm 1mm 0; border-bottom: 0.5pt solid var(--rule); }
thead th { border-bottom: 1.2pt solid var(--ink); vertical-align: bottom; }
tbody th { font-weight: 600; }
.figure { white-space: nowrap; }
tr, li { break-inside: avoid; }
.remarks { margin: 0; padding-left: 5mm; }
.remarks li { margin-bottom: 1mm; }
.bad { background: var(--ink); color: #fff; padding: 0 1.2mm; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
.chart { display: block; width: 100%; max-width: 170mm; height: auto; margin: 1mm 0 2mm; break-inside: avoid; break-after: avoid; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
.chart text { font-family: inherit; fill: var(--ink); }
code { font-family: "DejaVu Sans Mono", Consolas, Menlo, monospace; font-size: 0.92em; }
@page { margin: 14mm 14mm 16mm; }
@media print {
  html { background: #fff; }
  body { max-width: none; padding: 0; }
  .wide { overflow: visible; }
  main > section { break-before: page; }
  main > section:first-of-type { break-before: auto; }
  a { text-decoration: none; }
}
`;
