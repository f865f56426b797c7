/**
 * How the report looks: one column for reading, light or dark as the reader's system is, black on white on paper. Every
 * pair of colours of text and ground has a contrast of at least 4.5 : 1.
 */
export const reportStyle = `
:root {
  --ground: #ffffff; --ink: #1b1f24; --soft: #4b5561; --line: #c3cad3; --band: #f2f5f8;
  --link: #0b5cad; --good: #0f6b3c; --bad: #b3261e; --open: #7a4f00;
  --stop-ground: #fdecea; --care-ground: #fff4e0; --note-ground: #eaf2fb;
}
@media screen and (prefers-color-scheme: dark) {
  :root {
    --ground: #15191e; --ink: #e6eaef; --soft: #aab4c0; --line: #424c58; --band: #1f252c;
    --link: #7ab8f5; --good: #6fd19a; --bad: #ff9d94; --open: #f0bf66;
    --stop-ground: #3a1c1a; --care-ground: #362a12; --note-ground: #172737;
  }
}
* { box-sizing: border-box; }
body { --boothwright-ink: var(--ink); --boothwright-paper: var(--ground); --boothwright-accent: var(--link); }
html { background: var(--ground); color: var(--ink); font: 100%/1.5 system-ui, -apple-system, "Segoe UI", "DejaVu Sans", sans-serif; }
body { max-width: 58rem; margin: 0 auto; padding: 1.5rem 1.25rem 4rem; overflow-wrap: break-word; }
h1 { font-size: 1.8rem; line-height: 1.2; margin: 0 0 .25rem; }
h2 { font-size: 1.4rem; line-height: 1.25; margin: 3rem 0 .25rem; padding-top: .75rem; border-top: 3px solid var(--ink); }
h3 { font-size: 1.12rem; margin: 2rem 0 .5rem; }
h4 { font-size: 1rem; margin: 1.25rem 0 .4rem; }
p, ul, ol, dl { margin: .5rem 0; }
li { margin: .2rem 0; }
a { color: var(--link); }
code { font-family: ui-monospace, "DejaVu Sans Mono", monospace; font-size: .92em; overflow-wrap: anywhere; }
.subtitle, .lead { color: var(--soft); margin-top: 0; }
nav ol { columns: 2; column-gap: 2rem; padding-left: 1.4rem; }
nav li { break-inside: avoid; margin: 0; }
dl > div { display: grid; grid-template-columns: minmax(7rem, 12rem) 1fr; gap: 0 1rem; padding: .25rem 0; border-bottom: 1px solid var(--line); }
dt { color: var(--soft); }
dd { margin: 0; overflow-wrap: anywhere; }
table { border-collapse: collapse; width: 100%; margin: 1rem 0; font-size: .9rem; line-height: 1.35; font-variant-numeric: tabular-nums; }
h1, h2, h3, h4, figcaption, .notice, caption { overflow-wrap: anywhere; }
caption { text-align: left; font-weight: 600; padding: .2rem 0 .35rem; }
th, td { text-align: left; vertical-align: top; padding: .3rem .5rem; border-bottom: 1px solid var(--line); }
thead th, thead td { background: var(--band); border-bottom: 2px solid var(--line); }
tbody th { font-weight: 500; }
table.words th, table.words td { min-width: 6.5rem; }
table.figures { display: inline-table; width: auto; min-width: 13rem; margin-right: 2.5rem; vertical-align: top; }
.figure { text-align: right; white-space: nowrap; }
thead .figure { white-space: normal; }
.good { color: var(--good); }
.bad { color: var(--bad); font-weight: 700; }
.open { color: var(--open); font-weight: 600; }
figure { margin: 1.25rem 0; }
figcaption { color: var(--soft); font-size: .88rem; }
svg { display: block; max-width: 100%; height: auto; }
.chart svg text { fill: var(--ink); }
figure.drawing { display: inline-block; vertical-align: top; margin-right: .8rem; max-width: 100%; }
.drawing figcaption { width: 0; min-width: 100%; }
.notice { margin: 1rem 0; padding: .6rem .9rem; border-left: 5px solid var(--soft); background: var(--note-ground); }
.notice.stop { border-color: var(--bad); background: var(--stop-ground); }
.notice.care { border-color: var(--open); background: var(--care-ground); }
.notice-title { font-weight: 700; margin: 0; }
.cards { display: grid; grid-template-columns: repeat(auto-fill, minmax(16rem, 1fr)); gap: .9rem; margin: 1rem 0; }
.card { border: 1.5px dashed var(--soft); padding: .6rem .8rem; font-size: .9rem; break-inside: avoid; }
.card h4 { margin: 0 0 .3rem; }
.card dl > div { grid-template-columns: 5.5rem 1fr; padding: .12rem 0; }
@media (max-width: 40rem) {
  body { padding: 1rem .75rem 3rem; }
  nav ol { columns: 1; }
  dl > div { grid-template-columns: 1fr; }
  table { font-size: .82rem; }
  th, td { padding: .25rem .3rem; }
}
@media print {
  html { font-size: 9.5pt; line-height: 1.4; }
  body { max-width: none; padding: 0; }
  a { color: inherit; }
  section { break-before: page; }
  section:first-child { break-before: auto; }
  h2 { margin-top: 0; }
  h2, h3, h4, caption, .lead { break-after: avoid; }
  thead { display: table-header-group; }
  tr, figure, .notice, dl > div, li { break-inside: avoid; }
  .cards { grid-template-columns: 1fr 1fr; }
  p { orphans: 3; widows: 3; }
}
`;
