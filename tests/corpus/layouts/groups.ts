import { addSheet, a1, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, tell, type Kit, type Layout } from "../kit";
import { inUnit } from "../list";
import { input } from "../page";
import { perHundred } from "../recipes";
import { grouped, inGroups } from "./grouped";
import { markRecipe, say, sumOf } from "./parts";

/** The sum of some sums. */
const plus = (
  sheet: CorpusSheet,
  row: number,
  column: number,
  sums: readonly Spot[],
  format: string,
) => put(sheet, row, column, shown(`=${sums.map(a1).join("+")}`, format));

/** Groups under titles of their own, each with a subtotal and a blank row; shares beside grams. */
function dairySugarsFruit(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Build-up");
  const made = perHundred(kit.make(1)[0]!);
  const groups = grouped(made);
  put(sheet, 0, 0, `${made.title}: how it is built up`);
  const batch = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{
        label: "Batch size (g)",
        bare: "Batch size",
        value: random.pick([800, 1000, 1500, 2400]),
      },
    },
  );
  const heads = putRow(sheet, 3, 0, ["Ingredient", "Share", "Grams"]);
  let row = 4;
  const [names, amounts, grams, sums]: Spot[][] = [[], [], [], []];
  const gramSums: Spot[] = [];
  for (const { title, lines } of groups) {
    put(sheet, row++, 0, title);
    const top = row;
    for (const each of lines) {
      const [name, share] = putRow(sheet, row, 0, [
        ...[each.en, shown(inUnit(each.grams, "fraction"), "0.0%")],
      ]) as [Spot, Spot];
      const weight = put(sheet, row, 2, shown(`=${a1(share)}*${fixed(batch)}`, "0"));
      [names!, amounts!, grams!].forEach((list, at) => list.push([name, share, weight][at]!));
      row += 1;
    }
    put(sheet, row, 0, "Subtotal");
    sums!.push(
      sumOf(
        kit,
        sheet,
        { row, column: 1 },
        amounts!.filter((spot) => spot.row >= top),
        "0.0%",
      ),
    );
    gramSums.push(
      sumOf(
        kit,
        sheet,
        { row, column: 2 },
        grams!.filter((spot) => spot.row >= top),
        "0",
      ),
    );
    row += 2;
  }
  put(sheet, row, 0, "Total");
  const total = plus(sheet, row, 1, sums!, "0.0%");
  plus(sheet, row, 2, gramSums, "0");
  marked.formulaColumns.push({ spots: grams!, heading: heads[2]!, fixed: [batch] });
  const recipe = markRecipe(kit, inGroups(made, groups), {
    ...{ names: names!, amounts: amounts!, alsoAmounts: grams!, unit: "fraction", total },
    amountLabel: heads[1]!,
  });
  const next = say(sheet, recipe, { row: 3, column: 4 }, [
    { label: "Freezing point, °C", states: "freezing point", as: "typed" },
    { label: "Sugars, % of the mix", states: "sugar share", as: "typed" },
    {
      label: "Sugars, g per 100 g of water",
      states: "sugar per 100 g water",
      as: "typed",
      decimals: 1,
    },
    { label: "Ice in the mix at −14 °C (%)", states: "ice of mix", as: "typed", temperatureC: -14 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Serving target" });
  tell(kit, sheet, recipe, { row: row + 2, column: 0, as: "sentence" });
  const card = addSheet(marked.book, "Card");
  putRow(card, 0, 0, [`='${sheet.name}'!A1`]);
  putRow(card, 1, 0, ["Batch (g)", `='${sheet.name}'!${a1(batch)}`]);
  put(card, 3, 0, "Put on the door of the cabinet.");
}

/** Groups under titles. */
export const groups: readonly Layout[] = [
  { name: "dairy, sugars, fruit with subtotals", language: "en", build: dairySugarsFruit },
];
