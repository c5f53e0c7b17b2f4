import { a1, addSheet, put, putRow, shown, span, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { withLines, type MadeRecipe } from "../recipes";
import { line, water } from "../stock";
import { anchored, answer, formulas, markRecipe, sumAt } from "./marking";

const bath = (index: number, waterGrams: number, saltGrams: number): MadeRecipe =>
  withLines(
    {
      ...{ title: `Bath ${index + 1}`, language: "en", names: [], grams: [], lines: [] },
      ...{ target: null, flagged: true },
    },
    [water(waterGrams), line("salt", "Salz", saltGrams)],
  );

const freezing = { states: "freezing point", as: "formula" } as const;
const measured = { states: "freezing point", as: "typed", decimals: 1 } as const;

/** Brine baths one a row: strength, calculated and measured freezing point. */
function brine(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Brine");
  const amountLabel = put(sheet, 0, 0, "Brine baths for the pop moulds, amounts in grams");
  const names = putRow(sheet, 2, 1, ["water", "salt"]) as [Spot, Spot];
  put(sheet, 2, 0, "Bath");
  const heads = putRow(sheet, 2, 3, ["Brine", "Salt per 100 g of water"]);
  const strengths = [5, 8, 12, 16, 20, 25];
  const rows = strengths.map((perHundred, index) => {
    const waterGrams = random.whole(4, 12) * 500;
    const saltGrams = Math.round(((perHundred + random.between(-1, 1)) * waterGrams) / 100);
    const made = bath(index, waterGrams, saltGrams);
    put(sheet, 3 + index, 0, made.title);
    const amounts = putRow(sheet, 3 + index, 1, made.grams) as [Spot, Spot];
    const total = sumAt(kit, sheet, [3 + index, 3], amounts);
    const cells = { names, amounts, shared: true, total, amountLabel };
    return { recipe: markRecipe(kit, made, cells), amounts };
  });
  const ratios = rows.map(({ amounts: [wet, salt] }) =>
    shown(`=100*${a1(salt)}/${a1(wet)}`, "0.0"),
  );
  formulas(kit, heads[1]!, ratios, { sheet, at: [3, 4] });
  rows.forEach(({ recipe, amounts }, index) => {
    const row = 3 + index;
    const lines = `${anchored(span(names))},${span(amounts)}`;
    answer(sheet, recipe, ["Freezing point (°C)", 2, 5], [row, 5], freezing, lines);
    // What was measured may differ from what is calculated: it is no result of the sheet.
    answer(sheet, recipe, ["Measured (°C)", 2, 6], [row, 6], measured);
    recipe.results.pop();
  });
  const columns = [5, 6].map((column) =>
    rows.map((_, index) => ({ sheet: sheet.name, row: 3 + index, column })),
  );
  const at = (column: number) => ({ sheet: sheet.name, row: 2, column });
  marked.formulaColumns.push({ spots: columns[0]!, heading: at(5), fixed: [] });
  const temperature = { spots: columns[1]!, heading: at(6), total: null } as const;
  marked.numberColumns.push({ ...temperature, kind: "temperature" });
  const caution = "Not food. Wear gloves: brine and metal this cold burn the skin.";
  note(kit, sheet, 10, 0, caution);
}

/** Baths of salt and water in which moulds freeze. */
export const baths: readonly Layout[] = [
  { name: "brine baths for moulds", language: "en", build: brine },
];
