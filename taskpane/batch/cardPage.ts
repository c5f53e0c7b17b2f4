import type { Words } from "../words/words";
import type { RecipeCard } from "./recipeCard";

const ESCAPES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
};
const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);

const list = (title: string, lines: readonly string[]): string =>
  lines.length === 0
    ? ""
    : `<h2>${escaped(title)}</h2><ul>${lines.map((line) => `<li>${escaped(line)}</li>`).join("")}</ul>`;

const STYLE = `body{font:15px/1.45 system-ui,sans-serif;max-width:40rem;margin:1.5rem auto;padding:0 1rem;color:#15303a;background:#fff}
h1{font-size:1.5rem;border-bottom:3px solid #1c667c;padding-bottom:.3rem}h2{font-size:1rem;margin:1.1rem 0 .3rem}
table{border-collapse:collapse;width:100%}th,td{text-align:left;padding:.2rem .6rem .2rem 0;border-bottom:1px solid #d9e0e1}
td.n{text-align:right;font-variant-numeric:tabular-nums}ul{margin:.2rem 0;padding-left:1.2rem}
.germs{font-weight:600;border:2px solid #15303a;padding:.4rem .6rem}.small{font-size:.8rem;color:#536a72}
@media print{body{margin:0;max-width:none}}`;

/** The card as a page of its own: one file, nothing from elsewhere, ready for the printer. */
export function cardPage(card: RecipeCard, words: Words): string {
  const texts = words.batch.card;
  const amounts = card.amounts
    .map(
      ({ name, grams, household }) =>
        `<tr><th scope="row">${escaped(name)}</th><td class="n">${escaped(grams)}</td><td>${escaped(household)}</td></tr>`,
    )
    .join("");
  const expected = card.expected.map(([name, value]) => `${name}: ${value}`);
  return `<!doctype html>
<html lang="${escaped(words.language)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(card.title)}</title><style>${STYLE}</style></head>
<body><h1>${escaped(card.title)}</h1>
<table><thead><tr><th scope="col">${escaped(words.batch.size.item)}</th><th scope="col">${escaped(texts.grams)}</th><th scope="col">${escaped(texts.household)}</th></tr></thead><tbody>${amounts}</tbody></table>
${list(texts.expected, expected)}
<p class="germs">${escaped(card.germs)}</p>
${list(texts.cautions, card.cautions)}
${list(texts.assumptions, card.assumptions)}
<div class="small">${list(texts.sources, card.sources)}<p>${escaped(card.made)}</p></div>
</body></html>
`;
}
