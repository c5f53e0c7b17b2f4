import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { massOf, meets, withLines, type MadeRecipe } from "../recipes";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { ALCOHOL, line } from "../stock";
import { hasSpirit, lineRows, summed } from "./shared";

/** The recipe with gin in it, where it has no spirit yet. */
function withGin(made: MadeRecipe, share: number): MadeRecipe {
  if (hasSpirit(made)) return made;
  const gin = line("gin 40 %", "Gin 40 %", Math.round(massOf(made) * share), ALCOHOL);
  const strong = withLines(made, [...made.lines, gin]);
  // A target that the gin, not the seeded mistake, makes it miss is no longer its target.
  const isMissedByGin =
    made.target !== null && meets(made, made.target) && !meets(strong, made.target);
  return isMissedByGin ? { ...strong, target: null } : stillMet(strong);
}

/** Per cent by volume of a line that is a spirit. */
function strengthOf({ lines }: MadeRecipe, index: number): number | undefined {
  const { en, caution } = lines[index]!;
  return caution === ALCOHOL.caution ? Number(/([\d.]+) %/.exec(en)![1]) : undefined;
}

/** The sorbet's lines, the alcohol beside each that has any. */
function sorbetLines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const heads = putRow(sheet, 2, 0, ["Ingredient", "ABV (%)", "Weight (g)", "Alcohol in it (g)"]);
  const rows = lineRows(sheet, { row: 3, column: 0 }, made, (index) => [
    ...[made.names[index], strengthOf(made, index), made.grams[index]],
  ]);
  const plan = { name: 0, amount: 2, heads, word: "All of it", gap: 1 };
  const list = summed(kit, sheet, rows, plan);
  const pure = rows.map(([, abv, grams], index) => {
    const content = `=${a1(grams!)}*RIME.ABVTOMASSFRACTION(${a1(abv!)})`;
    const isSpirit = strengthOf(made, index) !== undefined;
    const alcohol = put(sheet, grams!.row, 3, isSpirit ? shown(content, "0.0") : undefined);
    if (isSpirit) kit.marked.alcohols.push({ grams: grams!, abv: abv!, alcohol });
    return alcohol;
  });
  sumOf(kit, sheet, { row: list.total.row, column: 3 }, pure, "0.0");
  return markRecipe(kit, made, { ...list, unit: "g" });
}

const BAR_SYRUPS = [
  ["thin, for granita", 250, 500],
  ["simple", 500, 500],
  ["rich", 600, 300],
] as const;

/** The syrups behind the bar. */
function barSyrups({ marked, random }: Kit, sheet: CorpusSheet, left: number): void {
  const heads = putRow(sheet, 2, left, [
    ...["Syrup", "Sugar (g)", "Water (g)", "Sugar to 100 g water (g)", "Sugar in the syrup (%)"],
  ]);
  const ours = ["ours", 10 * random.whole(30, 45), 10 * random.whole(26, 50)] as const;
  const rows = [...BAR_SYRUPS, ours].map((each, index) => {
    const [, sugar, water] = putRow(sheet, 3 + index, left, each) as [Spot, Spot, Spot];
    const at = (step: number, formula: string): Spot =>
      put(sheet, 3 + index, left + step, shown(formula, "0.0"));
    const perWater = at(3, `=${a1(sugar)}/${a1(water)}*100`);
    const share = at(4, `=${a1(sugar)}/(${a1(sugar)}+${a1(water)})*100`);
    marked.strengths.push({ sugar, water, perWater, share });
    return [perWater, share];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

const SAID: readonly Said[] = [
  { label: "Freezing point", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Pure alcohol", inCell: "g", states: "alcohol", as: "typed", decimals: 1 },
  {
    ...{ label: "Ice at −18 °C, of the mix", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
  { label: "Dissolved solids", inCell: "g", states: "dissolved", as: "formula", format: "0" },
];

/** A sorbet rather than an ice with milk, where there is one. */
const sorbetAmong = (given: readonly MadeRecipe[]): MadeRecipe =>
  given.find(({ seeded }) => seeded !== undefined) ??
  given.find(({ lines }) => lines.every(({ allergen }) => allergen?.en !== "milk")) ??
  given[0]!;

/** A sorbet with spirit and what a bar wants to know of it. */
function ginSorbet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Boozy sorbet");
  const base = withGin(sorbetAmong(kit.make(4)), kit.random.whole(3, 7) / 100);
  const made = called(base, { sugar: "caster sugar", "vodka 40 %": "whisky 40 %" });
  put(sheet, 0, 0, `${made.title}, the version for grown-ups`);
  const recipe = sorbetLines(kit, sheet, made);
  let next = say(sheet, recipe, { row: recipe.total!.row + 1, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Served" });
  next = tell(kit, sheet, recipe, { row: next + 2, column: 0, as: "sentence" });
  barSyrups(kit, sheet, 5);
  note(kit, sheet, next + 1, 0, "Spirit goes in last, when the base is cold.");
}

/** What a bar freezes. */
export const spirits: readonly Layout[] = [
  { name: "sorbet for grown-ups beside the bar syrups", language: "en", build: ginSorbet },
];
