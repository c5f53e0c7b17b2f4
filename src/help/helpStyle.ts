/** The style of every static page: readable at 320 px, in the dark and in print. */
export const helpStyle = `
:root { color-scheme: light dark; --ink: #1c2b2e; --paper: #fbfaf6; --line: #cfd6d4; --quiet: #55666a; --mark: #0f5c6e; }
@media screen and (prefers-color-scheme: dark) {
  :root { --ink: #e6ecea; --paper: #12191b; --line: #34444a; --quiet: #a3b2b5; --mark: #7cc3d6; }
}
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 1rem; max-width: 46rem; background: var(--paper); color: var(--ink); font: 1rem/1.55 system-ui, sans-serif; overflow-wrap: break-word; }
a { color: var(--mark); }
h1 { font-size: 1.5rem; line-height: 1.25; margin: 0.6rem 0; }
h2 { font-size: 1.05rem; margin: 1.6rem 0 0.3rem; }
code, pre { font-family: ui-monospace, Consolas, monospace; font-size: 0.92em; }
pre { border-inline-start: 3px solid var(--mark); margin: 0.5rem 0; padding: 0.4rem 0.7rem; white-space: pre-wrap; overflow-wrap: anywhere; }
table { border-collapse: collapse; width: 100%; }
th, td { border-bottom: 1px solid var(--line); padding: 0.3rem 0.5rem 0.3rem 0; text-align: start; vertical-align: top; }
dt { margin-top: 0.5rem; }
dd { margin: 0; padding-inline-start: 0.9rem; }
.quiet { color: var(--quiet); }
.wide { overflow-x: auto; }
@media screen and (max-width: 30rem) {
  .list, .list tbody, .list tr, .list th, .list td { display: block; padding-inline: 0; }
  .list th { border: 0; padding-bottom: 0; }
  .list td { padding-top: 0; }
}
@media print { body { max-width: none; } nav { display: none; } dt, h2 { break-after: avoid; } tr, pre { break-inside: avoid; } }
`;
