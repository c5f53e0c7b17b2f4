import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Said } from "../layouts/parts";
import { called, stillMet } from "../kitchens/hand";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { massOf, meets, withLines, type MadeRecipe } from "../recipes";
import { ALCOHOL, line } from "../stock";
import { desk, down, linesOn, tellBehind, type Desk } from "./desk";

const isSpirit = ({ lines }: MadeRecipe, index: number): boolean =>
  lines[index]!.caution === ALCOHOL.caution;

/** The prepared mix, else one without milk; with rum in it where it has no spirit. */
function boozy({ make, random }: Kit): MadeRecipe {
  const given = make(5);
  const noMilk = given.find(({ lines }) => lines.every(({ allergen }) => allergen?.en !== "milk"));
  const made = given.find(({ seeded }) => seeded !== undefined) ?? noMilk ?? given[0]!;
  if (made.lines.some((_, index) => isSpirit(made, index))) return made;
  const grams = Math.round(massOf(made) * random.between(0.025, 0.06));
  const rum = line("rum 40 %", "Rum 40 %", grams, ALCOHOL);
  const mixed = stillMet(withLines(made, [...made.lines, rum]));
  // A prepared mix that misses its target is not to meet it by the rum, nor one that meets it to miss it.
  const { target, seeded } = made;
  const isPrepared = seeded !== undefined && target !== null;
  return isPrepared && meets(mixed, target) !== meets(made, target) ? made : mixed;
}

/** The same with the spirit as its last line. */
const spiritLast = (made: MadeRecipe): MadeRecipe => {
  const of = (wanted: boolean) => made.lines.filter((_, index) => isSpirit(made, index) === wanted);
  return withLines(made, [...of(false), ...of(true)]);
};

/** Per cent by volume in a bottle's name. */
const strengthOf = (en: string): number => Number(/([\d.]+) ?%/.exec(en)![1]);

/** The alcohol of each bottle, under the list; gives the cells with its grams. */
function bottles(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { amounts, end }: Desk): Spot[] {
  const at = made.lines.flatMap((_, index) => (isSpirit(made, index) ? [index] : []));
  putRow(sheet, end + 2, 1, ["Bottle", "% by volume", "In the mix (g)", "Ethanol in it (g)"]);
  return at.map((index, step) => {
    const row = end + 3 + step;
    const [, abv, grams] = putRow(sheet, row, 1, [
      ...[made.names[index], strengthOf(made.lines[index]!.en), `=${a1(amounts[index]!)}`],
    ]) as [Spot, Spot, Spot];
    const content = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    const alcohol = put(sheet, row, 4, shown(content, "0.0"));
    kit.marked.alcohols.push({ grams, abv, alcohol });
    return alcohol;
  });
}

const TASTE: readonly Said[] = [
  { label: "Starts freezing at (°C)", states: "freezing point", as: "formula" },
  { label: "Ethanol, whole mix (g)", states: "alcohol", as: "typed", decimals: 1 },
  { label: "Sugars, part of the weight (%)", states: "sugar share", as: "typed" },
  { label: "Water all told (g)", states: "water", as: "formula", format: "0" },
  {
    label: "Frozen water at −16 °C (% of the water)",
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

/** A glass of it: how much, how many, how much alcohol. */
function glasses(kit: Kit, sheet: CorpusSheet, row: number, total: Spot, ethanol?: Spot): void {
  const words = { label: "A glass holds (g)", bare: "A glass holds" };
  const value = kit.random.pick([45, 60, 80]);
  const glass = input(kit, sheet, { row, column: 6 }, { ...words, value });
  const count = shown(`=${a1(total)}/${a1(glass)}`, "0");
  putRow(sheet, row + 1, 6, ["Glasses from the mix", count]);
  if (ethanol === undefined) return;
  const each = shown(`=${a1(ethanol)}*${a1(glass)}/${a1(total)}`, "0.0");
  putRow(sheet, row + 2, 6, ["Ethanol in a glass (g)", each]);
}

/** A recipe in the order of its making, with shares of the weight. */
function mixing(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): [Desk, MarkedRecipe] {
  const list = desk(kit, sheet, made, {
    ...{ row: 2, column: 0 },
    heads: ["When", "Into the mix", "Grams", "Part of the mix"],
    cells: (index) => [
      ...[isSpirit(made, index) ? "last, cold" : "first", made.names[index], made.grams[index]],
    ],
    ...{ name: 1, amount: 2, sum: "Full mix" },
  });
  const { heads, amounts, total, end } = list;
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[3]!, end, format: "0.0%", fixed: [total] },
    formula: (cell) => `=${cell}/${fixed(total)}`,
  });
  return [list, markRecipe(kit, made, { ...linesOn(list), alsoAmounts, unit: "g" })];
}

/** A sorbet with spirit for a tasting menu. */
function palate(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Palate cleanser");
  const made = called(spiritLast(boozy(kit)), { sugar: "white sugar" });
  put(sheet, 0, 0, `${made.title} with a kick, between fish and meat`);
  const [list, recipe] = mixing(kit, sheet, made);
  const next = say(sheet, recipe, { row: 2, column: 6 }, TASTE);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "In the glass" });
  const pure = bottles(kit, sheet, made, list);
  glasses(kit, sheet, next + 2, list.total, pure[0]);
  const row = list.end + 3 + pure.length;
  const free = tellBehind(sheet, recipe, { row: row + 2, column: 1 }, "For the waiters: contains");
  note(kit, sheet, free + 1, 1, "Glasses frosted, no spoon, served in one go.");
}

/** Sheets of a restaurant. */
export const kicks: readonly Layout[] = [
  { name: "palate cleanser with a kick", language: "en", build: palate },
];
