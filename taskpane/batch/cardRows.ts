import type { Contents } from "../host";
import type { Words } from "../words/words";
import type { RecipeCard } from "./recipeCard";

/** A text that would run as a formula is kept a text. */
const text = (cell: string): string => (/^[=+\-@]/.test(cell) ? `'${cell}` : cell);

/** The card as rows of a sheet, three columns wide. */
export function cardRows(card: RecipeCard, words: Words): Contents {
  const texts = words.batch.card;
  const block = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [[""], [title], ...lines.map((line) => [text(line)])];
  const rows = [
    [text(card.title)],
    [""],
    [words.batch.size.item, texts.grams, texts.household],
    ...card.amounts.map(({ name, grams, household }) => [text(name), grams, household]),
    ...block(
      texts.expected,
      card.expected.map(([name, value]) => `${name}: ${value}`),
    ),
    [""],
    [card.germs],
    ...block(texts.cautions, card.cautions),
    ...block(texts.assumptions, card.assumptions),
    ...block(texts.sources, card.sources),
    [card.made],
  ];
  return rows.map((row) => [row[0] ?? "", row[1] ?? "", row[2] ?? ""]);
}
