/**
 * How a sheet looks, on screen and on paper: black rules and type that survive a copier, boxes that take an oily
 * thumb, colour only where a signal word has it by ANSI Z535.4, and never colour alone. No text is below 10 pt but
 * the running head: NASA CR-177605 finds 0.10 in the least, 0.11 in (11 pt) best read.
 */
export const STYLE = `
:root {
  --sans: "Noto Sans", "Open Sans", "Segoe UI", "Helvetica Neue", "DejaVu Sans", Verdana, Arial, sans-serif;
  --mono: "DejaVu Sans Mono", "Noto Sans Mono", Consolas, Menlo, monospace;
  --ink: #111;
  --rule: #6b6b6b;
  --shade: #f4f4f1;
  --mark: #d24a0b;
}
* { box-sizing: border-box; }
html { background: #e4e3de; color: var(--ink); font: 11.5pt/1.36 var(--sans); font-variant-numeric: tabular-nums slashed-zero; }
body { margin: 0 auto; max-width: 210mm; padding: 12mm 12mm 16mm 15mm; background: #fff; overflow-wrap: break-word; }
h1, h2, h3, h4, h5, h6 { line-height: 1.2; margin: 0; break-after: avoid; break-inside: avoid; overflow-wrap: anywhere; }
h2 { font-size: 15pt; margin: 7mm 0 2.5mm; }
h3 { font-size: 12.5pt; margin: 5mm 0 1.5mm; }
h4, h5, h6 { font-size: 11.5pt; margin: 4mm 0 1.5mm; }
p { margin: 0 0 2mm; orphans: 3; widows: 3; }
a { color: inherit; }
code { font-family: var(--mono); font-size: 0.92em; }
pre { margin: 2mm 0; padding: 2mm 3mm; border: 0.5pt solid var(--rule); font: 10pt/1.35 var(--mono); white-space: pre-wrap; break-inside: avoid; }
ul.plain { margin: 1mm 0 2mm; padding-left: 5mm; }
ul.plain .d1 { margin-left: 5mm; }
ul.plain .d2 { margin-left: 10mm; }

/* Title block */
.block { position: relative; border: 1.2pt solid var(--ink); break-inside: avoid; }
.block-top { display: flex; align-items: flex-start; gap: 5mm; padding: 3.5mm 4mm 3.5mm 15mm; }
.block-top > div { flex: 1; }
.block .shop { font-weight: 700; margin: 0; }
.block .kind { margin: 0; white-space: nowrap; text-align: right; }
h1 { font-size: 23pt; letter-spacing: -0.01em; }
h1.long { font-size: 16pt; }
.stripe { position: absolute; left: 6.5mm; top: -2.6mm; width: 3.2mm; height: 17mm; background: var(--mark); transform: skewX(-16deg); border-radius: 0.6mm; }
.cells { display: grid; grid-template-columns: repeat(12, 1fr); margin: 0; border-top: 1.2pt solid var(--ink); overflow: hidden; }
.cells > div { grid-column: span 3; padding: 1.2mm 2.5mm 1.5mm; border-left: 0.5pt solid var(--rule); border-bottom: 0.5pt solid var(--rule); margin: 0 0 -0.5pt -0.5pt; min-height: 13mm; }
.cells > .w4 { grid-column: span 4; }
.cells > .w6 { grid-column: span 6; }
.cells dt { font-size: 10pt; }
.cells dd { margin: 0; font-weight: 700; }
.cells dd.print { font-family: var(--mono); letter-spacing: 0.04em; }
.standing { margin: 3.5mm 0 0; padding: 2mm 3mm; border-left: 1.6mm solid var(--ink); background: var(--shade); }
.standing p { margin: 0 0 1mm; }
.standing p:last-child { margin: 0; }
.engine-note { margin: 2.5mm 0 0; font-style: italic; }

/* Tables */
table { border-collapse: collapse; width: 100%; }
th { text-align: left; font-weight: 700; }
thead { display: table-header-group; break-inside: avoid; }
.list th, .list td { padding: 1.3mm 2mm; border-bottom: 0.5pt solid var(--rule); vertical-align: top; }
.list thead th { font-size: 10pt; border-bottom: 1.2pt solid var(--ink); vertical-align: bottom; }
.list tr { break-inside: avoid; }
.list tbody { overflow-wrap: anywhere; }
.list tbody th { font-weight: 400; }
.list .box-cell { width: 20mm; white-space: nowrap; }
.list .narrow { width: 34mm; }
.list .steps { width: 26mm; }
.list .count { width: 22mm; }
.also-line { display: block; font-size: 10pt; }
.date { white-space: nowrap; }
.list.fixed { table-layout: fixed; }
.list .done { width: 15mm; }
.list .pair { width: 27mm; }
.list .few { width: 17mm; }
.list .dated { width: 27mm; }
.list .sign { width: 46mm; border-left: 0.5pt solid var(--rule); }
.list-note { margin: 2mm 0 0; max-width: 100ch; }
.list .record { break-inside: avoid; }
.list .record tr > * { border-bottom: 0; }
.list .record tr:last-child > * { border-bottom: 0.5pt solid var(--rule); }
.list .record .more td { padding-top: 0; font-size: 10pt; }
.list.of-torques, .list.of-time { font-size: 10.5pt; }
.list.of-time tbody tr:first-child > td:not(:last-child) { white-space: nowrap; }
.list.of-tools tbody th, .list.of-parts tbody th, .list.of-new-parts tbody th { width: 48%; }
.list.of-consumables tbody th { width: 30%; }
.list.of-time tbody th { width: 32%; }
.list.of-torques tbody, .list.of-time tbody { overflow-wrap: break-word; }
.list.job th { width: 60mm; }
.list .number { width: 15mm; white-space: nowrap; }

/* Steps */
.rows { table-layout: fixed; border-top: 1.2pt solid var(--ink); border-bottom: 1.2pt solid var(--ink); }
.rows .c-box { width: 13.5mm; }
.rows .c-number { width: 12.5mm; }
.rows .c-values { width: 71mm; }
.rows .c-initials { width: 17mm; }
.rows > thead > tr > th { font-size: 10pt; padding: 1.2mm 1.5mm; border-bottom: 1.2pt solid var(--ink); vertical-align: bottom; background: #fff; }
.rows > tbody { break-inside: avoid; border-top: 0.5pt solid var(--rule); }
.rows > thead + tbody { border-top: 0; }
.rows > tbody.even { background: var(--shade); }
.rows > tbody > tr > td, .rows > tbody > tr > th { padding: 1.8mm 1.5mm; vertical-align: top; }
.rows > tbody > tr > th { font-size: 13pt; line-height: 1.25; padding-top: 2mm; }
.rows td.initials { border-left: 0.5pt solid var(--rule); }
.rows td.values { border-left: 0.5pt dotted var(--rule); }
.rows .what > p { margin: 0 0 1.5mm; max-width: 62ch; }
.rows .what > p:last-child { margin-bottom: 0; }
.rows > tbody > tr.wide > td { padding-top: 0; }
.rows > tbody.sub > tr > th { font-size: 11.5pt; padding-left: 1mm; white-space: nowrap; }
.rows > tbody.sub .box { width: 6mm; height: 6mm; }
.rows > tbody.sub > tr.main > td:first-child { padding-left: 3mm; }
.rows > tbody.only > tr > :first-child { box-shadow: inset 1.4mm 0 0 var(--ink); }
.rows > tbody.only > tr.only-if > td { font-weight: 700; padding: 1.6mm 1.5mm 1.6mm 4mm; border-bottom: 0.5pt solid var(--rule); }
.rows .if-not { font-weight: 400; }
.rows > tbody.opens, .rows > tbody.only-head { break-after: avoid; }
.rows > tbody > tr.sign-off > td { padding: 1.5mm 0.3mm 0; }
.together { break-inside: avoid; }
.rows > tbody.section-end { break-before: avoid; border-top: 1.2pt solid var(--ink); background: #fff; }
.section-end .line { min-width: 24mm; }

/* Boxes and blanks */
.box { display: inline-block; width: 7mm; height: 7mm; border: 1.1pt solid var(--ink); border-radius: 0.7mm; background: #fff; vertical-align: middle; }
.box.small { width: 6mm; height: 6mm; }
.line { display: inline-block; min-width: 40mm; height: 8mm; border-bottom: 0.8pt solid var(--ink); vertical-align: bottom; }
.blank { display: inline-block; width: 25mm; height: 8mm; border: 0.8pt solid var(--ink); background: #fff; vertical-align: middle; }
.entry + .entry { margin-top: 2mm; padding-top: 1.6mm; border-top: 0.5pt dotted var(--rule); }
.entry p { margin: 0; }
.entry .facts { margin: 0; }
.entry .facts dt, .entry .facts dd { display: inline; }
.entry dt { font-size: 10pt; }
.entry dd { margin: 0; font-weight: 700; }
.entry .later dd { font-weight: 400; }
.also { font-weight: 400; }
.also, .whole { white-space: nowrap; }
.wide .facts > div { display: inline-block; margin-right: 4mm; }
.entry .note { font-weight: 400; font-style: italic; }
.ticks { display: flex; flex-wrap: wrap; gap: 1.2mm 3mm; margin: 1.2mm 0 0; padding: 0; list-style: none; }
.ticks li { display: flex; align-items: center; gap: 1.5mm; }
.limits .value { font-weight: 700; }
.readings { width: auto; margin-top: 1mm; }
.readings th, .readings td { padding: 0.7mm 2mm 0.7mm 0; vertical-align: middle; font-weight: 400; }
.readings thead th { font-size: 10pt; vertical-align: bottom; }
.readings .unit { white-space: nowrap; margin-left: 1.5mm; }
.columns { columns: 2; column-gap: 8mm; }
.columns .reading { display: flex; align-items: center; gap: 2mm; padding: 0.7mm 0; break-inside: avoid; }
.columns .reading .label { flex: 1; }
.lines { margin: 1mm 0 0; }
.lines > div { display: flex; flex-wrap: wrap; gap: 0 2mm; align-items: flex-end; margin-top: 0.8mm; }
.lines dd { flex: 1; }
.lines .line { min-width: 22mm; width: 100%; }
.tighten { margin-top: 1mm; }
.tighten figure { display: flex; gap: 6mm; align-items: center; margin: 0 0 2mm; break-inside: avoid; }
.tighten figure svg { flex: none; }
.order-note { font-style: italic; }
.drawn { display: flex; gap: 4mm 6mm; align-items: center; flex-wrap: wrap; margin: 1.5mm 0; break-inside: avoid; }
.drawn svg { flex: none; max-width: 100%; }
.drawn ul { padding: 0; margin: 0; list-style: none; }
.order-list { columns: 2; column-gap: 4mm; flex: 1; margin: 0; padding: 0; list-style: none; font-size: 10.5pt; }
.order-list b { display: inline-block; min-width: 5.5mm; }
.tighten figure .order-list li { padding-left: 6mm; text-indent: -6mm; break-inside: avoid; }
.tighten figure .order-list b { text-indent: 0; min-width: 6mm; }
.passes { width: 100%; border-top: 0.5pt solid var(--rule); }
.passes th, .passes td { padding: 1.2mm 2mm 1.2mm 0; vertical-align: middle; border-bottom: 0.5pt solid var(--rule); }
.passes tr:last-child > * { border-bottom: 0; padding-bottom: 0; }
.passes tr { break-inside: avoid; }
.passes th { width: 38mm; font-weight: 400; line-height: 1.25; }
.passes .also { display: block; }
.numbered { display: flex; flex-wrap: wrap; gap: 1.2mm 1.2mm; margin: 0; padding: 0; list-style: none; }
.numbered .named { display: flex; align-items: center; gap: 1.2mm; margin-right: 0.8mm; }
.box.bearing { width: 8.4mm; height: 8.4mm; padding: 0.3mm 0.8mm; font-size: 10pt; line-height: 1; }
svg text { font-family: var(--sans); }
.figure { margin: 2mm 0; break-inside: avoid; }
.figure img { display: block; max-width: 100%; max-height: 90mm; }
.figure .missing { border: 0.8pt dashed var(--ink); padding: 3mm; }
.figure figcaption { font-size: 10pt; margin-top: 1mm; }

/* Signal words of ANSI Z535.6: each also by its frame, so that a copier loses nothing */
.notice-row td { padding-bottom: 0; }
.notice { display: flex; align-items: stretch; border: 1pt solid var(--ink); background: #fff; break-inside: avoid; }
.notice .signal { flex: none; display: flex; align-items: center; gap: 1.5mm; min-width: 36mm; padding: 1.5mm 3mm; margin: 0; font-weight: 800; font-size: 12.5pt; letter-spacing: 0.04em; border-right: 1pt solid var(--ink); }
.notice .signal svg { width: 6mm; height: 5.4mm; flex: none; }
.notice .says { padding: 1.8mm 3mm; margin: 0; }
.notice .hazards { font-weight: 700; }
.notice.danger { border: 3.4pt solid var(--ink); }
.notice.danger .signal { background: #b01116; color: #fff; }
.notice.warning { border: 2.2pt solid var(--ink); }
.notice.warning .signal { background: #f28a00; color: #000; }
.notice.caution .signal { background: #ffd100; color: #000; }
.notice.notice-only { border-style: dashed; }
.notice.notice-only .signal { background: #174a86; color: #fff; font-style: italic; }
.notice + .notice { margin-top: 1.5mm; }

/* Hold points and sign-off */
.hold { border: 3.6pt double var(--ink); background: #fff; padding: 2.5mm 3mm 3mm; break-inside: avoid; }
.hold .hold-title { margin: 0 0 1.2mm; font-size: 13pt; font-weight: 700; }
.hold .hold-title .word { background: var(--ink); color: #fff; padding: 0.4mm 2.2mm; margin-right: 2mm; text-transform: uppercase; letter-spacing: 0.05em; }
.hold p { margin: 0 0 1.2mm; }
.hold .ticks { display: grid; grid-template-columns: repeat(auto-fit, minmax(65mm, 1fr)); margin-bottom: 2mm; }
.signs { display: grid; grid-template-columns: 1fr 1fr; gap: 3mm 6mm; margin: 0; }
.signs > div { display: flex; flex-direction: column; justify-content: flex-end; }
.signs dt { font-size: 10pt; }
.signs dd { margin: 0; display: flex; gap: 4mm; align-items: flex-end; }
.signs dd .line { flex: 1; min-width: 0; }
.signs dd .line.date { flex: none; width: 38mm; }
.signs dd .tag { font-size: 10pt; }
.closing { border: 1.2pt solid var(--ink); padding: 2mm 3.5mm 2.5mm; margin-top: 4mm; break-inside: avoid; }
.closing-head { display: flex; justify-content: space-between; align-items: center; margin: 0 0 1.5mm; }
.closing h2 { margin: 0; }
.closing .complete { display: flex; align-items: center; gap: 3mm; font-weight: 700; margin: 0; }
.section-end .end { display: flex; flex-wrap: wrap; align-items: flex-end; gap: 1mm 4mm; margin: 0; }
.section-end .end .title { flex: 1; min-width: 0; overflow-wrap: anywhere; font-weight: 700; }

@media print {
  html { background: #fff; }
  body { max-width: none; padding: 0; }
  a { text-decoration: none; }
  .notice .signal, .hold .word, .stripe, .standing, .even { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  .block { margin-top: 3mm; }
}
@media screen and (max-width: 760px) {
  body { padding: 5mm; }
  .rows .c-values { width: 42%; }
  .list .narrow, .list .steps, .list .sign { width: auto; }
  .tighten figure, .signs { display: block; }
}
@media screen and (max-width: 640px) {
  body { padding: 3mm; }
  .cells > div, .cells > .w4, .cells > .w6 { grid-column: span 6; min-height: 0; }
  .block-top { padding: 3mm 3mm 3mm 12mm; gap: 2mm; flex-wrap: wrap; }
  .block-top > div { flex: 1 1 100%; }
  .block .kind { text-align: left; }
  h1 { font-size: 18pt; }
  .rows, .rows > tbody:not([hidden]), .rows > tbody > tr:not([hidden]), .rows > tbody > tr > td, .list, .list tbody { display: block; width: auto; }
  .rows > colgroup, .rows > thead, .list thead { display: none; }
  .rows > tbody > tr.main:not([hidden]) { display: grid; grid-template-columns: auto auto 1fr; align-items: center; }
  .rows > tbody > tr.main > .what, .rows > tbody > tr.main > .values { grid-column: 1 / -1; border: 0; }
  .rows > tbody > tr.main > .initials { grid-row: 1; grid-column: 3; border: 0; }
  .rows > tbody > tr.main > .what { padding-top: 0; }
  .list tbody tr { display: flex; flex-wrap: wrap; align-items: baseline; padding: 1mm 0; border-bottom: 0.5pt solid var(--rule); }
  .list tbody th, .list td, .list td.number { display: block; width: auto; border: 0; padding: 0.5mm 1.5mm; }
  .list tbody th { flex: 1 1 100%; }
  .list.job tbody th { flex: 0 1 45%; width: auto; }
  .list.job td { flex: 1 1 45%; }
  .list.of-tools tbody th, .list.of-parts tbody th, .list.of-new-parts tbody th, .list.of-consumables tbody th, .list.of-time tbody th { width: auto; }
  .list tbody.record tr:not(:last-child) { padding-bottom: 0; border: 0; }
  .list .record tr:last-child > * { border: 0; }
  .list td:has(.box) { align-self: center; }
  .list td:has(.box) + th { flex: 1 1 calc(100% - 20mm); align-self: center; }
  .list td:has(.box) + td + th { flex-basis: 50%; }
  .list td:empty { display: none; }
  .list [data-head]::before { content: attr(data-head) ": "; font-size: 10pt; font-weight: 400; }
  .tighten .passes, .passes tbody, .passes tr, .passes th, .passes td { display: block; width: auto; }
  .passes th { border: 0; padding-bottom: 0; }
  .tighten figure svg, .drawn svg { max-width: 100%; height: auto; }
  .columns { columns: 1; }
  .notice { flex-direction: column; }
  .notice .signal { border-right: 0; border-bottom: 1pt solid var(--ink); }
  .closing-head { flex-wrap: wrap; }
  .section-end .end .title { flex: 1 1 100%; }
}
`;
