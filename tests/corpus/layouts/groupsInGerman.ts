import { a1, addSheet, fixed, over, put, putRow, shown, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { inUnit } from "../list";
import { grouped, inGroups } from "./grouped";
import { markRecipe, say, sumOf } from "./parts";

/** The group named in the first column, its sum in the last, per cent beside grams. */
function groupInFront(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Rezeptur");
  const made = kit.make(1)[0]!;
  const groups = grouped(made);
  put(sheet, 1, 0, made.title);
  const heads = putRow(sheet, 3, 0, ["Gruppe", "Zutat", "Menge (kg)", "Anteil (%)", "je Gruppe"]);
  let row = 4;
  const [names, amounts]: Spot[][] = [[], []];
  for (const { title, lines } of groups) {
    const top = row;
    const label = put(sheet, top, 0, title);
    for (const each of lines) {
      names!.push(put(sheet, row, 1, each.de));
      amounts!.push(put(sheet, row++, 2, shown(inUnit(each.grams, "kg"), "0.000")));
    }
    if (lines.length > 1) sheet.merged.push(over([label, { ...label, row: row - 1 }]));
    const parts = amounts!.filter((spot) => spot.row >= top);
    sumOf(kit, sheet, { row: row - 1, column: 4 }, parts, "0.000");
  }
  row += 1;
  put(sheet, row, 1, "Summe");
  const total = sumOf(kit, sheet, { row, column: 2 }, amounts!, "0.000");
  const shares = amounts!.map((spot) =>
    put(sheet, spot.row, 3, shown(`=${a1(spot)}/${fixed(total)}*100`, "0.0")),
  );
  sumOf(kit, sheet, { row, column: 3 }, shares, "0.0");
  marked.formulaColumns.push({ spots: shares, heading: heads[3]!, fixed: [total] });
  const recipe = markRecipe(kit, inGroups(made, groups), {
    ...{ names: names!, amounts: amounts!, alsoAmounts: shares, unit: "kg", total },
    amountLabel: heads[2]!,
  });
  let next = say(sheet, recipe, { row: row + 3, column: 1 }, [
    { label: "Gefrierpunkt [°C]", states: "freezing point", as: "typed" },
    { label: "Gefrierpunktserniedrigung [K]", states: "depression", as: "typed" },
    {
      label: "gefrorenes Wasser bei −18 °C [%]",
      states: "ice of water",
      as: "typed",
      temperatureC: -18,
    },
    { label: "Wasser insgesamt [g]", states: "water", as: "typed", decimals: 0 },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "Serviert als" });
  next = tell(kit, sheet, recipe, { row: next + 1, column: 1, as: "pair" });
  note(kit, sheet, next + 1, 1, "Trockenes vorher mischen.");
}

/** Groups named in front. */
export const groupsInGerman: readonly Layout[] = [
  { name: "Gruppe in der ersten Spalte", language: "de", build: groupInFront },
];
