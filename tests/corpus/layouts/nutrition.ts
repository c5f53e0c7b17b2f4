import { a1, addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { note, tell, type Kit, type Layout } from "../kit";
import { ENGLISH, packets, small } from "./packets";
import { markRecipe, say, sumOf } from "./parts";

const PARTS = ["fat", "sugars", "protein", "water"];

/** Fat, sugars, protein and water of each line, of the whole, of 100 g; a sauce from packets below. */
function nutrition(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Nutrition");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 1, `Nutrition of ${made.title.toLowerCase()}`);
  const heads = putRow(sheet, 2, 0, [
    ...["Ingredient", "Amount (g)", "Fat (g)", "Sugars (g)", "Protein (g)", "Water (g)"],
  ]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 3 + index, 0, [name, made.grams[index]]),
  );
  const [names, amounts] = [0, 1].map((at) => rows.map((row) => row[at]!)) as [Spot[], Spot[]];
  const row = 3 + rows.length;
  putRow(sheet, row, 0, ["Total"]);
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts);
  put(sheet, row + 1, 0, "In 100 g");
  PARTS.forEach((part, at) => {
    const column = 2 + at;
    const spots = names.map((name, index) => {
      const call = `=RIME.COMPONENT(${a1(name)},${a1(amounts[index]!)},"${part}")`;
      return put(sheet, name.row, column, shown(call, "0.0"));
    });
    marked.formulaColumns.push({ spots, heading: heads[column]!, fixed: [] });
    const sum = sumOf(kit, sheet, { row, column }, spots, "0.0");
    put(sheet, row + 1, column, shown(`=${a1(sum)}/${fixed(total)}*100`, "0.0"));
  });
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    unit: "g",
    amountLabel: heads[1]!,
    total,
  });
  const next = say(sheet, recipe, { row: row + 3, column: 0 }, [
    { label: "Dissolved solids, g", states: "dissolved", as: "typed", decimals: 0 },
    { label: "Alcohol, g", states: "alcohol", as: "typed", decimals: 1 },
    {
      label: "Sugars per 100 g water, g",
      states: "sugar per 100 g water",
      as: "typed",
      decimals: 1,
    },
    { label: "Freezing point, °C", states: "freezing point", as: "typed" },
  ]);
  const free = tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "sentence" }) + 1;
  note(kit, sheet, free, 0, "What the packets of the sauce say, per 100 g:");
  const items = ["harvest berry spread", "village plum butter"];
  const own = packets(kit, sheet, free + 1, { headings: ENGLISH, items, none: "none" });
  const lines = [
    [items[0]!, random.whole(20, 40) * 10],
    [items[1]!, 150],
    ["water", 120],
  ] as const;
  small(sheet, free + 5, ["Sauce", "g", "Sauce freezes at (°C)"], lines, own);
}

/** Sheets for the label. */
export const nutritions: readonly Layout[] = [
  { name: "nutrition line by line", language: "en", build: nutrition },
];
