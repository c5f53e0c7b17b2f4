import { addSheet, put, putRow } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { batchOf } from "./mengen";
import { lines, under } from "./zeilen";

/** What was weighed: amount before its unit before its name. */
function weighed(kit: Kit, made: MadeRecipe, top: number): MarkedRecipe {
  const sheet = kit.marked.book.sheets[0]!;
  put(sheet, top, 0, made.title);
  const heads = putRow(sheet, top + 1, 0, ["Einwaage", "Einheit", "Zutat", "Allergene"]);
  const cells = lines(sheet, { row: top + 2, column: 0 }, made, (name, grams, index) => {
    const allergen = made.flagged ? made.lines[index]!.allergen?.de : undefined;
    return [inUnit(grams, "kg"), "kg", name, allergen];
  });
  const [amounts, unitCells, names, flags] = [0, 1, 2, 3].map((at) => cells[at]!);
  const total = under(kit, amounts!);
  putRow(sheet, total.row, 1, ["kg", "Summe"]);
  const recipe = markRecipe(kit, made, {
    ...{ names: names!, amounts: amounts!, unitCells: unitCells!, unit: "kg", total },
    amountLabel: heads[0]!,
  });
  if (made.flagged) recipe.flags.push(...flags!);
  return recipe;
}

/** One kind of the day and how it came out of the machine; gives the next free row. */
function kind(kit: Kit, made: MadeRecipe, top: number): number {
  const sheet = kit.marked.book.sheets[0]!;
  const recipe = weighed(kit, made, top);
  const { row } = recipe.total!;
  const temperatureC = -kit.random.whole(12, 18) / 2;
  const words = { label: "Auslauftemperatur (°C)", bare: "Auslauftemperatur" };
  const place = { row: row + 1, column: 0 };
  const temperature = input(kit, sheet, place, { ...words, value: temperatureC });
  const ice = { temperature, temperatureC, as: "formula", percent: "format" } as const;
  const next = say(sheet, recipe, { row: top + 1, column: 5 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula" },
    { label: "Gefrierpunktserniedrigung", inCell: "K", states: "depression", as: "formula" },
    { label: "Anteil des Wassers gefroren beim Auslauf", states: "ice of water", ...ice },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Ziel" });
  return tell(kit, sheet, recipe, { row: row + 3, column: 0, as: "sentence" }) + 1;
}

/** The day's kinds one below the other, as the machine ran. */
function production(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Produktion Samstag");
  put(sheet, 0, 0, "Produktion Samstag, in der Reihenfolge der Maschine");
  let top = 2;
  for (const made of kit.make(3)) top = kind(kit, batchOf(made, 5), top);
  note(kit, sheet, top, 0, "Nach Nuss immer die Maschine zerlegen und spülen.");
}

/** What an ice-cream parlour notes as it works. */
export const produktion: readonly Layout[] = [
  { name: "Eisdiele, Produktion am Samstag", language: "de", build: production },
];
