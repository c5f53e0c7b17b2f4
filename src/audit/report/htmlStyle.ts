/** The look of the report's page: readable in light and dark, on a narrow screen and on paper. */
export const htmlStyle = `
:root { color-scheme: light dark; --ink: #1c2326; --paper: #ffffff; --line: #b9c3c7; --fine: #566268;
  --error: #a3201d; --warning: #7a5200; --note: #285f8f; }
@media (prefers-color-scheme: dark) {
  :root { --ink: #e6ecee; --paper: #161b1e; --line: #46535a; --fine: #a3b1b8;
    --error: #ff9d96; --warning: #f2c063; --note: #9ccbf5; }
}
body { margin: 0; color: var(--ink); background: var(--paper);
  font: 1rem/1.5 system-ui, sans-serif; overflow-wrap: anywhere; }
main { max-width: 46rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
h1 { font-size: 1.5rem; line-height: 1.25; }
h2 { font-size: 1.15rem; margin-top: 2rem; }
.result { font-weight: 600; }
ol { list-style: none; padding: 0; }
ol > li { border: 1px solid var(--line); border-left-width: 5px; border-radius: 4px;
  padding: .75rem 1rem; margin: .75rem 0; break-inside: avoid; }
ol p { margin: .25rem 0; }
.error { border-left-color: var(--error); }
.warning { border-left-color: var(--warning); }
.note { border-left-color: var(--note); }
.error .severity { color: var(--error); }
.warning .severity { color: var(--warning); }
.note .severity { color: var(--note); }
.severity { text-transform: uppercase; letter-spacing: .04em; font-size: .875rem; }
.effect { font-size: 1.1rem; font-weight: 600; }
.effect::first-letter { text-transform: uppercase; }
.place { font-weight: 600; }
.fine { color: var(--fine); font-size: .8125rem; }
@media print {
  :root { --ink: #000; --paper: #fff; --line: #888; --fine: #444; --error: #000; --warning: #000; --note: #000; }
  body { font-size: 10.5pt; }
  main { max-width: none; padding: 0; }
}
`;
