import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { cautionsIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { hundred } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { CHEF, rowsAt, thermometer } from "./words";

const SAID: readonly Said[] = [
  { label: "Freezing point °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Solids dissolved, g in 100 g", states: "dissolved", as: "typed", decimals: 1 },
  { label: "Sugars, g to 100 g of water", states: "sugar per 100 g water", as: "typed" },
];

/** Eaters and portion at the top, the day's weights and allergens beside the shares. */
function dessert(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Spot {
  const { random } = kit;
  putRow(sheet, 0, 0, ["Frozen dessert", made.title]);
  const portion = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    { label: "Portion (g)", bare: "Portion", value: random.pick([60, 75, 80]) },
  );
  const eaters = putRow(sheet, 1, 3, ["Eaters", random.whole(10, 15) * 10])[1]!;
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Ingredient", "In 100 g (g)", "Today (kg)", undefined, "Allergen"],
      cells: (item, grams, index) => [
        ...[item, shown(grams, "0.0"), undefined, undefined],
        made.flagged ? made.lines[index]!.allergen?.en : undefined,
      ],
    },
  );
  const kilos = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [portion, eaters] },
    content: (spot) => `=${a1(spot)}/100*${fixed(portion)}*${fixed(eaters)}/1000`,
  });
  put(sheet, end, 0, "Altogether");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, kilos, "0.00");
  const lines = { names, amounts, alsoAmounts: kilos, amountLabel: heads[1]!, total };
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  if (made.flagged) recipe.flags.push(...rows.map((cells) => cells[4]!));
  const trolley = putRow(sheet, end + 2, 0, ["Trolley (°C)", -14]);
  kit.marked.inputs.push({ label: trolley[0]!, value: trolley[1]!, bare: "Trolley" });
  const next = say(sheet, recipe, { row: end + 3, column: 0 }, [
    {
      ...{ label: "Water frozen on the trolley, %", states: "ice of water", as: "formula" },
      ...{ format: "0", temperature: trolley[1]!, temperatureC: -14 },
    },
    ...SAID,
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Has to be" });
  const cautions = cautionsIn(made, CHEF);
  if (cautions !== "") recipe.flags.push(put(sheet, next + 2, 0, cautions));
  return eaters;
}

const WEEK = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday"];

/** The week's counts. */
function week(kit: Kit, sheet: CorpusSheet, eaters: readonly Spot[]): void {
  putRow(sheet, 0, 0, [undefined, "Booked", "Walk-ins", "Plates"]);
  const rows = WEEK.map((day, index) => {
    const [, booked, extra] = putRow(sheet, 1 + index, 0, [
      ...[day, kit.random.whole(150, 260), kit.random.whole(5, 40)],
    ]);
    const plates = put(sheet, 1 + index, 3, `=${a1(booked!)}+${a1(extra!)}`);
    return [booked!, extra!, plates];
  });
  const heading = { sheet: sheet.name, row: 0, column: 3 };
  kit.marked.formulaColumns.push({ spots: rows.map((cells) => cells[2]!), heading, fixed: [] });
  put(sheet, 6, 0, "Week");
  [0, 1, 2].forEach((at) => {
    const parts = rows.map((cells) => cells[at]!);
    sumOf(kit, sheet, { row: 6, column: 1 + at }, parts);
  });
  rowsAt(sheet, { row: 8, column: 0 }, [
    ["Dessert days", "Eaters"],
    ...eaters.map((spot, index) => [WEEK[1 + 2 * index], `='${spot.sheet}'!${a1(spot)}`]),
  ]);
  thermometer(
    kit,
    sheet,
    { row: 0, column: 5 },
    {
      ...{ heading: "Freezer 3 at 6 am (°C)", count: 5, range: [-22, -18] },
    },
  );
  note(kit, sheet, 12, 0, "Hatch opens at 11:45, trolley out at 12:10");
}

/** A works canteen with ice on two days. */
function worksCanteen(kit: Kit): void {
  const mades = kit.make(2).map(hundred);
  const eaters = mades.map((made, index) =>
    dessert(kit, addSheet(kit.marked.book, ["Tuesday", "Thursday"][index]!), made),
  );
  week(kit, addSheet(kit.marked.book, "Week"), eaters);
}

/** A works canteen. */
export const worksCanteens: readonly Layout[] = [
  { name: "works canteen, portions and eaters", language: "en", build: worksCanteen },
];
