import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { readings, rowsOf, WARNS } from "./words";

const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri"];

/** Batches by day and product; gives the week's batches of each. */
function plan(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Spot[] {
  put(sheet, 0, 0, "FLOOR PLAN WEEK 31 (number of batches)");
  putRow(sheet, 1, 0, ["Line B", ...DAYS, "Week"]);
  const rows = mades.map((made, at) =>
    putRow(sheet, 2 + at, 0, [made.title, ...DAYS.map(() => kit.random.whole(0, 3))]).slice(1),
  );
  const sums = rows.map((cells, at) => sumOf(kit, sheet, { row: 2 + at, column: 6 }, cells));
  const end = 2 + mades.length;
  put(sheet, end, 0, "Batches a day");
  DAYS.forEach((_, day) => sumOf(kit, sheet, { row: end, column: 1 + day }, columnOf(rows, day)));
  sumOf(kit, sheet, { row: end, column: 6 }, sums);
  rowsOf(sheet, { row: end + 2, column: 0 }, [
    ["Crew", "early", "late"],
    ["Line B", "three", "two"],
    ["Wash-down", "one", "one"],
  ]);
  readings(
    kit,
    sheet,
    { row: end + 6, column: 0 },
    {
      heads: ["Hardening tunnel", "Air (°C)"],
      when: DAYS,
      tenths: [-334, -302],
    },
  );
  note(kit, sheet, end + 13, 0, "Between two mixes: full wash-down, signed by the shift lead.");
  return sums;
}

const KNOWN: readonly Said[] = [
  { label: "Initial fp [°C]", states: "freezing point", as: "formula" },
  { label: "Fp lowered by [K]", states: "depression", as: "typed", decimals: 1 },
  { label: "Sugars in mix [%]", states: "sugar share", as: "formula", format: "0.0" },
  {
    label: "Ice at draw, −6 °C, of the mix [%]",
    states: "ice of mix",
    as: "typed",
    temperatureC: -6,
  },
  {
    label: "Ice in store, −22 °C, of the mix [%]",
    states: "ice of mix",
    as: "typed",
    temperatureC: -22,
  },
];

/** A batch card and what the week takes from the store; gives the next free row. */
function card(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, batches: Spot, top: number): number {
  const { random } = kit;
  put(sheet, top, 0, made.title.toUpperCase());
  const week = putRow(sheet, top + 1, 0, ["Batches", undefined, `='Floor'!${a1(batches)}`])[2]!;
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 2, column: 0 },
    {
      heads: [
        "Bin",
        "Material",
        "Batch (kg)",
        "Week (kg)",
        "Set aside (kg)",
        "Still to fetch (kg)",
      ],
      cells: (name, grams) => [
        ...[`${random.pick(["A", "B", "C"])}${random.whole(1, 19)}`, name],
        ...[shown(inUnit(grams, "kg"), "0.000"), undefined, random.whole(0, 40) / 2],
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  const scaled = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [week] },
    content: (spot) => `=${a1(spot)}*${fixed(week)}`,
  });
  beside(kit, heads[5]!, scaled, {
    ...{ sheet, format: "0.0" },
    content: (spot, index) => `=MAX(0,${a1(spot)}-${a1(rows[index]![4]!)})`,
  });
  put(sheet, end, 1, "Mix");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 3 }, scaled, "0.0");
  const cells = { names, amounts, alsoAmounts: scaled, unit: "kg", total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[2]! });
  const said = [...KNOWN, ...ofAlcohol(made, "Alcohol in a batch [g]")];
  const next = say(sheet, recipe, { row: top + 2, column: 7 }, said);
  nameTarget(sheet, recipe, { row: next, column: 7, label: "Sold to be" });
  tellIn(sheet, recipe, { row: next + 1, column: 7 }, WARNS);
  return Math.max(end, next + 1) + 3;
}

/** A factory floor's week: how often each mix, and what that takes. */
function floor(kit: Kit): void {
  const own = { sucrose: "granulated sugar", sugar: "granulated sugar", water: "tap water" };
  const mades = kit.make(3).map((made) => called(upTo(made, 24000), own));
  const sums = plan(kit, addSheet(kit.marked.book, "Floor"), mades);
  const sheet = addSheet(kit.marked.book, "Batch cards");
  let top = 0;
  mades.forEach((made, at) => {
    top = card(kit, sheet, made, sums[at]!, top);
  });
}

/** A small factory's plan. */
export const floorPlans: readonly Layout[] = [
  { name: "small factory, floor plan with batch cards", language: "en", build: floor },
];
