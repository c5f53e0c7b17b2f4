import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { stillMet } from "../kitchens/hand";
import { lineRows, summed } from "./shared";

const ROLES: readonly (readonly [RegExp, string])[] = [
  [/^(sugar|sucrose|honey|fructose)/, "sweetness"],
  [/dextrose|syrup|inulin/, "body"],
  [/acid|lemon|lime/, "acidity"],
  [/milk|cream|yogurt|yolk/, "dairy base"],
];

const roleOf = (en: string): string | undefined => ROLES.find(([words]) => words.test(en))?.[1];

/** Shares of the mix, what each does, and kilograms for the pilot plant. */
function shares(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, batch: Spot): MarkedRecipe {
  const heads = putRow(sheet, 5, 1, ["Raw material", "Role", "% w/w", "Pilot batch (kg)"]);
  const rows = lineRows(sheet, { row: 6, column: 1 }, made, (index) => [
    ...[made.names[index], roleOf(made.lines[index]!.en), shown(made.grams[index]!, "0.0")],
  ]);
  const plan = { name: 0, amount: 2, heads, word: "Total", format: "0.0" };
  const list = summed(kit, sheet, rows, plan);
  const { amounts, total, amountLabel: heading } = list;
  const weighed = amounts.map((spot) =>
    put(sheet, spot.row, 4, shown(`=${a1(spot)}/100*${fixed(batch)}`, "0.000")),
  );
  sumOf(kit, sheet, { row: total.row, column: 4 }, weighed, "0.000");
  kit.marked.formulaColumns.push({ spots: weighed, heading: heads[3]!, fixed: [batch] });
  kit.marked.numberColumns.push({ spots: amounts, heading, total, kind: "per cent" });
  return markRecipe(kit, made, { ...list, alsoAmounts: weighed, unit: "%" });
}

/** What the mix is like, with a unit for each number. */
function properties(storage: Spot, temperatureC: number): readonly Said[] {
  const ice = { temperature: storage, temperatureC, as: "formula", format: "0.0" } as const;
  const typed = { as: "typed" } as const;
  return [
    { label: "Initial freezing point", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "Freezing point depression", inCell: "K", states: "depression", as: "typed" },
    { label: "Water content", inCell: "g/100 g", states: "water", as: "typed", decimals: 1 },
    { label: "Dissolved solids", inCell: "g/100 g", ...typed, states: "dissolved", decimals: 1 },
    { label: "Sugars in the mix", inCell: "% w/w", states: "sugar share", as: "typed" },
    {
      ...{ label: "Sugars on water", inCell: "g/100 g water" },
      ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
    },
    { label: "Water frozen in storage", inCell: "% of the water", states: "ice of water", ...ice },
    { label: "Ice in storage", inCell: "% of the mix", states: "ice of mix", ...ice },
  ];
}

/** A formulation with its head, its shares and what was worked out for it. */
function formulation(kit: Kit): void {
  const { random, marked } = kit;
  const made = stillMet(perHundred(kit.make(1)[0]!));
  const sheet = addSheet(marked.book, "Formulation");
  const version = `V${random.whole(2, 9)}`;
  putRow(sheet, 0, 1, ["Project", made.title, undefined, "Version", version]);
  const batch = input(
    kit,
    sheet,
    { row: 2, column: 1 },
    { label: "Pilot batch size (kg)", bare: "Pilot batch size", value: random.pick([4, 15, 30]) },
  );
  const temperatureC = random.pick([-15, -18]);
  const words = { label: "Storage temperature (°C)", bare: "Storage temperature" };
  const storage = input(kit, sheet, { row: 3, column: 1 }, { ...words, value: temperatureC });
  const recipe = shares(kit, sheet, made, batch);
  putRow(sheet, 5, 6, ["Property", "Value", "Unit"]);
  const place = { row: 6, column: 6 };
  const next = say(sheet, recipe, place, properties(storage, temperatureC));
  nameTarget(sheet, recipe, { row: next + 1, column: 6, label: "Texture brief" });
  const last = tell(kit, sheet, recipe, { row: recipe.total!.row + 2, column: 1, as: "sentence" });
  note(kit, sheet, last + 1, 1, "Let the mix rest overnight before the pilot run.");
}

/** Sheets of product development. */
export const formulations: readonly Layout[] = [
  { name: "formulation in per cent with its properties", language: "en", build: formulation },
];
