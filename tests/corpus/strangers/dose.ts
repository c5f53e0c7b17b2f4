import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { stillMet } from "../kitchens/hand";
import { beside, lines, under } from "./zeilen";

interface Mine {
  readonly fill: Spot;
  readonly temperature: Spot;
  readonly temperatureC: number;
}

/** My box, and how cold my freezer is. */
function mine(kit: Kit, sheet: CorpusSheet): Mine {
  const temperatureC = -kit.random.whole(16, 19);
  const words = [
    { label: "Meine Dose (ml)", bare: "Meine Dose", value: kit.random.pick([900, 1000, 1300]) },
    { label: "Masse, gewogen (g/ml)", bare: "Masse, gewogen", value: 1.08 },
    { label: "Gefriertruhe (°C)", bare: "Gefriertruhe", value: temperatureC },
  ];
  const [size, weight, temperature] = words.map((each, index) =>
    input(kit, sheet, { row: 1 + index, column: 5 }, each),
  ) as [Spot, Spot, Spot];
  put(sheet, 4, 5, "passt hinein (g)");
  const fill = put(sheet, 4, 6, shown(`=${a1(size)}*${a1(weight)}`, "0"));
  return { fill, temperature, temperatureC };
}

/** Per cent as I found it, grams for my own box at the left of it. */
function listed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, fill: Spot): MarkedRecipe {
  put(sheet, 1, 1, made.title);
  const heads = putRow(sheet, 3, 1, ["für meine Dose (g)", "Prozent", "Zutat"]);
  const cells = lines(sheet, { row: 4, column: 2 }, made, (name, grams) => [
    ...[shown(grams, "0.0"), name],
  ]);
  const [amounts, names] = cells as [Spot[], Spot[]];
  const formula = (cell: string) => `=${fixed(fill)}*${cell}/100`;
  const plan = { heading: heads[0]!, formula, fixed: [fill], format: "0" };
  const alsoAmounts = beside(kit, amounts, plan);
  under(kit, alsoAmounts, "0");
  const total = under(kit, amounts, "0.0");
  put(sheet, total.row, 3, "Summe");
  const column = { spots: amounts, heading: heads[1]!, total, kind: "per cent" } as const;
  kit.marked.numberColumns.push(column);
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "%", amountLabel: heads[1]!, total },
  });
}

/** A recipe in per cent for what I have at home. */
function box(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rezept");
  const { fill, temperature, temperatureC } = mine(kit, sheet);
  const recipe = listed(kit, sheet, stillMet(perHundred(kit.make(1)[0]!)), fill);
  const ice = { temperature, temperatureC, as: "formula", format: "0" } as const;
  const next = say(sheet, recipe, { row: 6, column: 5 }, [
    { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula", format: "0.0" },
    { label: "gefrorenes Wasser in meiner Truhe (% des Wassers)", states: "ice of water", ...ice },
    { label: "Eis in meiner Truhe (% der ganzen Masse)", states: "ice of mix", ...ice },
    { label: "Zucker (% der Masse)", states: "sugar share", as: "typed" },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Ich will es" });
  const row = Math.max(recipe.total!.row, next) + 2;
  const free = tell(kit, sheet, recipe, { row, column: 1, as: "pair" });
  note(kit, sheet, free + 1, 1, "Beim letzten Mal zu lange gerührt, lieber nur 25 Minuten.");
}

/** Sheets of someone who makes ice at home. */
export const dose: readonly Layout[] = [
  { name: "Heimküche, Prozent für meine Dose", language: "de", build: box },
];
