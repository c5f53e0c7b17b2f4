/** What this page needs beyond the style of the help: pictures and tables of numbers, narrow, dark and printed. */
export const validationStyle = `
:root { --ideal: #a8501a; --missed: #a3202a; }
@media screen and (prefers-color-scheme: dark) { :root { --ideal: #f0a36b; --missed: #ff9d94; } }
body { max-width: 58rem; }
section { border-top: 1px solid var(--line); margin-top: 2rem; }
section p { margin: 0.4rem 0; }
.use { border: 1px solid var(--line); border-radius: 1em; padding: 0 0.6em; white-space: nowrap; }
.pictures { display: flex; flex-wrap: wrap; gap: 0 1.5rem; margin: 0.8rem 0; }
figure { flex: 1 1 17rem; margin: 0; max-width: 27rem; min-width: 0; }
figcaption { color: var(--quiet); font-size: 0.85rem; }
figure svg { display: block; height: auto; width: 100%; }
svg text { fill: var(--quiet); font-size: 12.5px; }
.axes line { stroke: var(--line); }
.same { fill: none; stroke: var(--ink); stroke-dasharray: 4 3; }
.ours { fill: none; stroke: var(--mark); stroke-linecap: round; stroke-width: 5; }
.ideal { fill: none; stroke: var(--ideal); stroke-width: 1.3; }
.stated { fill: none; stroke: var(--quiet); stroke-opacity: 0.3; stroke-width: 4; }
.legend { color: var(--quiet); display: flex; flex: 1 0 100%; flex-wrap: wrap; font-size: 0.85rem; gap: 0 1rem; list-style: none; margin: 0.2rem 0 0; padding: 0; }
.mark { height: 1.1em; vertical-align: -0.2em; width: 1.1em; }
.numbers { font-size: 0.92rem; font-variant-numeric: tabular-nums; }
.numbers th[scope="row"] { font-weight: inherit; }
.numbers thead th { font-size: 0.85em; vertical-align: bottom; }
.numbers td, .numbers thead th:not(:first-child) { min-width: 4.2em; text-align: end; }
.reason { color: var(--quiet); display: block; font-size: 0.9em; font-weight: normal; }
.missed { color: var(--missed); font-weight: bold; }
.missed .quiet, .missed .reason { color: inherit; }
.missed .reason { font-weight: normal; }
.missed th { border-inline-start: 4px solid var(--missed); padding-inline-start: 0.5rem; }
.verdict { display: inline-block; min-width: 5.5em; }
summary { cursor: pointer; padding: 0.3rem 0; }
@media screen and (max-width: 40rem) {
  .numbers, .numbers thead, .numbers tbody { display: block; }
  .numbers tr { border-bottom: 1px solid var(--line); display: grid; grid-template-columns: repeat(var(--columns), minmax(0, 1fr)); padding: 0.25rem 0; }
  .numbers th, .numbers td, .numbers td:not(:first-child), .numbers thead th:not(:first-child) { border-block: 0; min-width: 0; padding: 0.1rem 0; text-align: start; }
  .numbers td { font-size: 0.8rem; white-space: nowrap; }
  .numbers tr.missed { border-inline-start: 4px solid var(--missed); padding-inline-start: 0.5rem; }
  .numbers .missed th { border: 0; padding: 0; }
  .numbers tr > :first-child { grid-column: 1 / -1; }
  .numbers td[colspan] { grid-column: span 4; white-space: normal; }
  .numbers thead th { font-size: 0.72rem; }
}
@media print {
  .all-figures, .groups summary { display: none; }
  .groups::details-content { content-visibility: visible; }
  .pictures, figure, tr, h2 { break-inside: avoid; }
  h2 { break-after: avoid; }
  section { break-inside: auto; }
  figure { flex-basis: 40%; }
}
`;
