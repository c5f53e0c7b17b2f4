import { a1, addSheet, put, putRow, shown, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { called, columnOf } from "./hand";

const DRINKS = [
  ...([
    ["gin 37.5 %", 37.5],
    ["rum 40 %", 40],
    ["liqueur 25 %", 25],
  ] as const),
  ...([
    ["white wine", 13],
    ["vodka 40 %", 40],
  ] as const),
];

/** The drinks of the evening with what each brings, and the pop that is sold beside them. */
function afterDark(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "After dark");
  put(sheet, 0, 0, "Drinks list, frozen after dark");
  const heads = putRow(sheet, 2, 0, [
    ...["Drink", "Strength (% vol)", "Measure (g)", "Ethanol (g)", "Price (£)"],
  ]);
  const rows = DRINKS.map(([drink, strength], index) => {
    const row = 3 + index;
    const cells = putRow(sheet, row, 0, [drink, strength, 5 * random.whole(4, 12)]);
    const [, abv, grams] = cells as [Spot, Spot, Spot];
    const content = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    const alcohol = put(sheet, row, 3, shown(content, "0.0"));
    put(sheet, row, 4, shown(random.whole(12, 22) / 2, "0.00"));
    marked.alcohols.push({ grams, abv, alcohol });
    return [...cells, alcohol];
  });
  const pure = columnOf(rows, 3);
  marked.formulaColumns.push({ spots: pure, heading: heads[3]!, fixed: [] });
  put(sheet, 8, 0, "One of each");
  sumOf(kit, sheet, { row: 8, column: 2 }, columnOf(rows, 2));
  sumOf(kit, sheet, { row: 8, column: 3 }, pure, "0.0");
  const warning = "Contains alcohol: not for children, not in pregnancy, not before driving.";
  const told = put(sheet, 10, 0, warning);
  note(kit, sheet, 11, 0, "Last orders at eleven.");
  pop(kit, told);
}

/** The pop on a sheet of its own, its total over the lines; the drinks have been warned of already. */
function pop(kit: Kit, warning: Spot): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "House pop");
  const made = called(kit.make(1)[0]!, { sugar: "granulated sugar", water: "tap water" });
  putRow(sheet, 0, 1, ["House pop:", made.title]);
  const heads = putRow(sheet, 3, 1, ["In the jug", "Poured (g)"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 4 + index, 1, [name, made.grams[index]]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  put(sheet, 2, 1, "Whole jug");
  const total = sumOf(kit, sheet, { row: 2, column: 2 }, amounts);
  const amountLabel = heads[1]!;
  const recipe = markRecipe(kit, made, { names, amounts, unit: "g", amountLabel, total });
  let next = say(sheet, recipe, { row: 5 + rows.length, column: 1 }, [
    { label: "Ethanol in the jug", inCell: "g", states: "alcohol", as: "typed", decimals: 1 },
    { label: "Begins to set", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    {
      ...{ label: "Water frozen at −18 °C", inCell: "%" },
      ...{ states: "ice of water", as: "typed", temperatureC: -18 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "Sold as" });
  tell(kit, sheet, recipe, { row: next + 1, column: 1, as: "sentence" });
  recipe.flags.push(warning);
}

/** Sheets of a bar that freezes its drinks. */
export const bars: readonly Layout[] = [
  { name: "after-dark drinks list and a pop", language: "en", build: afterDark },
];
