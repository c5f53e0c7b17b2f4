import type { Contents } from "../host";
import { asText } from "../office/cellContent";
import type { Words } from "../words/words";
import type { RecipeCard } from "./recipeCard";

/** The card as rows of a sheet, three columns wide. */
export function cardRows(card: RecipeCard, words: Words): Contents {
  const texts = words.batch.card;
  const block = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [[""], [title], ...lines.map((line) => [asText(line)])];
  const rows = [
    [asText(card.title)],
    [""],
    [words.batch.size.item, texts.grams, texts.household],
    ...card.amounts.map(({ name, gramsRounded, household }) => [
      asText(name),
      gramsRounded,
      asText(household),
    ]),
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
