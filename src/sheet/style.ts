/** The look of the sheet, on paper and on a screen: light inks, tables that stay whole, two pages of A4 or Letter. */
export const SHEET_STYLE = `
@page { margin: 11mm 12mm; }
.build-sheet, .build-sheet * { box-sizing: border-box; }
body.sheet-page { margin: 0; padding: 1rem; background: #fff; }
.build-sheet {
  color-scheme: light; color: #14242c; background: #fff; max-width: 46.5rem; margin: 0 auto;
  font: 400 0.75rem/1.32 -apple-system, "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", Arial, sans-serif;
  font-variant-numeric: tabular-nums lining-nums; overflow-wrap: anywhere;
}
.build-sheet :is(h1, h2, h3, p, ul, ol, dl, dd, figure, table, caption) { margin: 0; padding: 0; }
.build-sheet :is(h1, h2, h3) { font-family: Bahnschrift, "DIN Alternate", "Liberation Sans Narrow", "Arial Narrow", sans-serif; line-height: 1.2; }

.build-sheet h2 { font-size: 0.875rem; font-weight: 600; border-bottom: 1px solid #14242c; margin-bottom: 0.3rem; padding-bottom: 0.1rem; }
.build-sheet h3 { font-size: 0.8125rem; font-weight: 600; margin-bottom: 0.15rem; }
.build-sheet .sheet-title { font-size: 1.35rem; font-weight: 600; border: 0; margin: 0; padding: 0; }
.build-sheet section { margin-top: 0.7rem; }
.build-sheet .hint { color: #45565f; font-size: 0.6875rem; }
.build-sheet .tag { font: 400 0.6875rem/1 -apple-system, "Segoe UI", Roboto, "Liberation Sans", Arial, sans-serif; color: #45565f; }
.build-sheet .sheet-head { border: 1.5px solid #14242c; }
.build-sheet .sheet-head > div:first-child { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: baseline; gap: 0 1rem; padding: 0.3rem 0.5rem; }
.build-sheet .invented { color: #7a5200; font-weight: 600; }
.build-sheet .facts { display: grid; grid-template-columns: minmax(0, 1fr); }
.build-sheet .facts > div { display: flex; gap: 0.5rem; align-items: baseline; justify-content: space-between; border-top: 1px solid #c3cdc9; padding: 0.12rem 0; min-height: 1.3rem; }
.build-sheet .facts dt { color: #45565f; flex: none; max-width: 60%; }
.build-sheet .facts dd { font-weight: 600; text-align: right; min-width: 0; }
.build-sheet .facts dd.blank { flex: 1 1 30%; border-bottom: 1px dotted #45565f; min-width: 4rem; font-weight: 400; color: #45565f; text-align: left; min-height: 1rem; }
.build-sheet .sheet-head .facts { border-top: 1px solid #14242c; }
.build-sheet .sheet-head .facts > div { border-top: 0; padding: 0.15rem 0.5rem; }
.build-sheet .sheet-head .facts > div + div { border-top: 1px solid #c3cdc9; }
.build-sheet .pair { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0 1.1rem; }
.build-sheet table { width: 100%; border-collapse: collapse; font-size: 0.71875rem; }
.build-sheet :is(th, td) { padding: 0.1rem 0.3rem; text-align: left; vertical-align: top; font-weight: 400; border-top: 1px solid #c3cdc9; }
.build-sheet thead th { color: #45565f; border-top: 0; border-bottom: 1px solid #8b9a9a; font-size: 0.65625rem; vertical-align: bottom; }
.build-sheet :is(th, td).number { text-align: right; white-space: nowrap; }
.build-sheet td.strong { font-weight: 600; }
.build-sheet tfoot td { border-top: 1px solid #14242c; font-weight: 600; }
.build-sheet td.write { border: 1px solid #8b9a9a; min-width: 3rem; height: 1.35rem; }
.build-sheet .boxes { white-space: normal; min-width: 2.2rem; }
.build-sheet .box { display: inline-block; width: 0.66rem; height: 0.66rem; border: 1px solid #14242c; margin: 0 0.16rem 0 0; vertical-align: -0.06rem; }
.build-sheet ol, .build-sheet ul { list-style: none; }
.build-sheet li { padding-left: 1.05rem; text-indent: -1.05rem; margin-bottom: 0.12rem; }
.build-sheet li > .box { margin-right: 0.39rem; text-indent: 0; }
.build-sheet .cautions { border: 1.5px solid #7a5200; padding: 0.3rem 0.5rem; }
.build-sheet .cautions h2 { color: #7a5200; border-bottom: 0; margin: 0; }
.build-sheet :is(.cautions, .plain, .changes) li { padding-left: 0; text-indent: 0; }
.build-sheet .cautions li:first-child { font-weight: 600; }
.build-sheet figure { min-width: 0; }
.build-sheet svg { display: block; width: 100%; height: auto; max-width: 23rem; }
.build-sheet svg.true-size { width: 89mm; max-width: 100%; }
.build-sheet svg text { font-family: "Liberation Sans", Arial, sans-serif; fill: #14242c; }
.build-sheet .fault { color: #a51c2c; font-weight: 600; }
.build-sheet .links a, .build-sheet .links code { font: 0.625rem/1.3 "Liberation Mono", Consolas, monospace; overflow-wrap: anywhere; word-break: break-all; color: #14242c; }
.build-sheet .links a.follow { font: inherit; text-decoration: underline; display: inline-block; min-height: 1.5rem; padding: 0.2rem 0; }
.build-sheet :is(section.whole, .whole, table, figure, tr, li, .facts > div, .cautions) { break-inside: avoid; }
.build-sheet :is(section.whole, table).long { break-inside: auto; }
.build-sheet table.long thead { display: table-header-group; }
.build-sheet table.long tfoot { display: table-row-group; break-before: avoid; }
.build-sheet :is(h2, h3) { break-after: avoid; }
@media print, (min-width: 48rem) {
  .build-sheet .pair { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
  .build-sheet .sheet-head .facts { grid-template-columns: minmax(0, 3fr) minmax(0, 2fr); }
  .build-sheet .sheet-head .facts > div:nth-child(2) { border-top: 0; }
  .build-sheet .sheet-head .facts > div:nth-child(even) { border-left: 1px solid #c3cdc9; }
}
@media (max-width: 47.99rem) {
  .build-sheet .links a.follow { min-height: 2.75rem; padding-top: 0.8rem; }
  .build-sheet .scroll { overflow-x: auto; }
}
@media print {
  html, body, body.sheet-page { background: #fff; padding: 0; margin: 0; }
  .build-sheet { max-width: none; font-size: 8pt; line-height: 1.24; }
  .build-sheet table { font-size: 7.6pt; }
  .build-sheet .hint { font-size: 7pt; }
  .build-sheet section { margin-top: 2.4mm; }
  .build-sheet .sheet-title { font-size: 14pt; }
  .build-sheet h2 { font-size: 9.5pt; margin-bottom: 0.8mm; }
  .build-sheet .scroll { overflow: visible; }
  .build-sheet :is(.links a, .links code) { font-size: 6pt; line-height: 1.2; }
  .build-sheet .pair:has(> .long) { display: block; }
  .build-sheet .no-print { display: none; }
}
`;
