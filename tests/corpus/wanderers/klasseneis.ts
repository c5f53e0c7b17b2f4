import { a1, addSheet, fixed, put, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, type Kit } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf } from "../strollers/words";
import { heedAt } from "./worte";

/** What is read off the ice of the class. */
const said = (at: Spot, temperatureC: number): readonly Said[] => [
  {
    label: "Gefrierpunkterniedrigung der Mischung",
    ...{ inCell: "K", states: "depression", as: "typed" },
  },
  { label: "Gefrierpunkt der Mischung", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Zuckeranteil", inCell: "%", states: "sugar share", as: "typed" },
  {
    ...{ label: "Anteil Eis in der Mischung, im Gefrierfach", inCell: "%" },
    ...{ states: "ice of mix", as: "formula", temperature: at, temperatureC, format: "0.0" },
  },
  {
    ...{ label: "Anteil des Wassers, der im Gefrierfach gefriert", inCell: "%" },
    ...{ states: "ice of water", as: "formula", temperature: at, temperatureC, format: "0.0" },
  },
];

const PLAN = {
  heads: ["Zutat", "Massenanteil w", "Masse in g"],
  cells: (name: string, share: number) => [name, shown(inUnit(share, "fraction"), "0.000")],
};

/** Shares of the mass, and grams of each for all. */
function shares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, box: Spot): MarkedRecipe {
  const { heads, names, amounts, end } = listed(sheet, made, { row: 4, column: 0 }, PLAN);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [box] },
    content: (spot) => `=${a1(spot)}*${fixed(box)}`,
  });
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "fraction", amountLabel: heads[1]!, total },
  });
}

/** The ice of the class, and the freezer that it goes into. */
export function classIce(kit: Kit): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Klasseneis");
  const [first] = madeOf(kit, 1, (each) => !isAlcoholic(each));
  const made = called(stillMet(perHundred(first!)), { Zucker: "Haushaltszucker" });
  put(sheet, 0, 0, made.title);
  const temperatureC = -random.whole(15, 19);
  const [box, cold] = [
    ["Masse für alle (g)", "Masse für alle", 50 * random.whole(16, 40)] as const,
    ["Gefrierfach (°C)", "Gefrierfach", temperatureC] as const,
  ].map(([label, bare, value], index) =>
    input(kit, sheet, { row: 1 + index, column: 0 }, { label, bare, value }),
  ) as [Spot, Spot];
  const recipe = shares(kit, sheet, made, box);
  const row = recipe.total!.row + 2;
  const next = say(sheet, recipe, { row, column: 0 }, said(cold, temperatureC));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Beschaffenheit" });
  heedAt(sheet, recipe, { row: next + 1, column: 0 }, "Achtung Allergiker:");
}
