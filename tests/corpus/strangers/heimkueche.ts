import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { massOf, meets, withLines, type MadeRecipe } from "../recipes";
import { ALCOHOL, line } from "../stock";
import { hasAlcohol } from "./etikett";
import { beside, lines, under } from "./zeilen";

/** The same recipe with a dash of liqueur, if it has no alcohol; its target only where it is still met. */
function withLiqueur({ random }: Kit, made: MadeRecipe): MadeRecipe {
  if (hasAlcohol(made)) return made;
  const grams = Math.round(massOf(made) * random.between(0.03, 0.06));
  const liqueur = line("liqueur 25 %", "Fruchtlikör 25 %", grams, ALCOHOL);
  const mixed = withLines(made, [...made.lines, liqueur]);
  const isMet = made.seeded === undefined && made.target !== null && meets(mixed, made.target);
  return { ...mixed, title: `${made.title} mit Likör`, target: isMet ? made.target : null };
}

const INSTEAD = [
  ["Rum 40 %", 40],
  ["Wodka 37,5 %", 37.5],
  ["Obstbrand 40 %", 40],
  ["Weingeist 96 %", 96],
] as const;

/** What else could go in, and how much alcohol a dash of it would be. */
function instead(kit: Kit, row: number): number {
  const { marked, random } = kit;
  const sheet = marked.book.sheets[0]!;
  put(sheet, row, 0, "Was noch im Schrank steht, ein Schuss:");
  const heads = putRow(sheet, row + 1, 0, ["Getränk", "Gramm", "% vol", "davon Alkohol in g"]);
  const spots = INSTEAD.map(([drink, strength], index) => {
    const at = row + 2 + index;
    const poured = Math.round((random.whole(15, 45) * 40) / strength);
    const cells = putRow(sheet, at, 0, [drink, poured, strength]);
    const [, grams, abv] = cells as [Spot, Spot, Spot];
    const content = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    const alcohol = put(sheet, at, 3, shown(content, "0.0"));
    marked.alcohols.push({ grams, abv, alcohol });
    return alcohol;
  });
  marked.formulaColumns.push({ spots, heading: heads[3]!, fixed: [] });
  return row + 2 + INSTEAD.length;
}

const WITH_DASH: readonly Said[] = [
  { label: "reiner Alkohol", inCell: "g", states: "alcohol", as: "typed", decimals: 1 },
  { label: "Wasser insgesamt", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  {
    ...{ label: "Wasser zu Eis bei −18 °C", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** What goes in, in grams and as a share of the whole. */
function gramsAndShares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const heads = putRow(sheet, 2, 0, ["Zutaten", "Gramm", "Anteil"]);
  const cells = lines(sheet, { row: 3, column: 0 }, made, (name, grams) => [name, grams]);
  const [names, amounts] = cells as [Spot[], Spot[]];
  const total = under(kit, amounts);
  put(sheet, total.row, 0, "Summe");
  const formula = (cell: string) => `=${cell}/${fixed(total)}`;
  const plan = { heading: heads[2]!, formula, fixed: [total], format: "0%" };
  const alsoAmounts = beside(kit, amounts, plan);
  under(kit, alsoAmounts, "0%");
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[1]!, total },
  });
}

/** Sorbet or ice with a dash; the bottles I could take instead below. */
function dash(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis mit Schuss");
  const made = withLiqueur(kit, kit.make(1)[0]!);
  put(sheet, 0, 0, made.title);
  const recipe = gramsAndShares(kit, sheet, made);
  let next = say(sheet, recipe, { row: recipe.total!.row + 2, column: 0 }, WITH_DASH);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "soll werden wie" });
  next = instead(kit, tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "sentence" }) + 1);
  note(kit, sheet, next + 1, 0, "Alkohol erst zugeben, wenn die Masse kalt ist.");
}

/** Sheets of someone who makes ice for guests. */
export const heimkueche: readonly Layout[] = [
  { name: "Heimküche, Sorbet oder Eis mit Likör", language: "de", build: dash },
];
