import { a1, addSheet, fixed, put, putRow, shown, span, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { absolute, freezesAt, markRecipe, say, sumOf } from "../layouts/parts";
import { input } from "../page";
import { perHundred } from "../recipes";
import { columnOf, stillMet } from "./hand";
import { jars } from "./jars";

const SWIRL = ["hedgerow jelly", "orchard butter", "water", "sugar"];

/** Own jars on a sheet; swirls made of them in rows; the ice that they go into. */
function swirls(kit: Kit): void {
  const { marked, random } = kit;
  const larder = addSheet(marked.book, "Larder");
  put(larder, 0, 0, "Our own jars, g per 100 g");
  const own = jars(
    kit,
    larder,
    { row: 1, column: 0 },
    {
      headings: ["name", "sugars", "water", "fat", "protein", "inert", "allergens", "source"],
      ...{ items: SWIRL.slice(0, 2), none: "none", source: "our label" },
    },
  );
  const sheet = addSheet(marked.book, "Swirls");
  put(sheet, 0, 0, "Swirls (g)");
  const heads = putRow(sheet, 2, 0, ["Swirl", ...SWIRL, "Sum", "Freezing point (°C)"]);
  for (const [index, swirl] of ["for spring", "for summer", "for autumn"].entries()) {
    const grams = [20 * random.whole(5, 12), 20 * random.whole(3, 8), 60, 10 * random.whole(1, 3)];
    const [, ...cells] = putRow(sheet, 3 + index, 0, [swirl, ...grams]);
    sumOf(kit, sheet, { row: 3 + index, column: 5 }, cells);
    const call = `=RIME.FREEZINGPOINT(${absolute(span(heads.slice(1, 5)))},${span(cells)},Larder!${own})`;
    put(sheet, 3 + index, 6, shown(call, "0.00"));
  }
  const ice = addSheet(marked.book, "Ice under it");
  const made = stillMet(perHundred(kit.make(1)[0]!));
  putRow(ice, 0, 0, ["Ice:", made.title]);
  const place = { row: 1, column: 0 };
  const batch = { label: "Batch (g)", bare: "Batch", value: random.pick([1200, 2000, 3500]) };
  const size = input(kit, ice, place, batch);
  const lines = putRow(ice, 2, 0, ["Per cent", "Ingredient", "Grams"]);
  const rows = made.names.map((name, index) =>
    putRow(ice, 3 + index, 0, [made.grams[index], name]),
  );
  const [amounts, names] = [columnOf(rows, 0), columnOf(rows, 1)];
  const row = 3 + rows.length;
  put(ice, row, 1, "in all");
  const total = sumOf(kit, ice, { row, column: 0 }, amounts, "0.0");
  const weighed = amounts.map((spot) =>
    put(ice, spot.row, 2, shown(`=${fixed(size)}*${a1(spot)}/100`, "0")),
  );
  sumOf(kit, ice, { row, column: 2 }, weighed, "0");
  marked.formulaColumns.push({ spots: weighed, heading: lines[2]!, fixed: [size] });
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: weighed, unit: "%", amountLabel: lines[0]!, total },
  });
  let next = say(ice, recipe, { row: 2, column: 4 }, [
    { label: "Freezing point of the ice (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Dissolved in 100 g (g)", states: "dissolved", as: "typed", decimals: 1 },
    { label: "Sugars (% by mass)", states: "sugar share", as: "typed" },
  ]);
  nameTarget(ice, recipe, { row: next++, column: 4, label: "Kind of ice" });
  tell(kit, ice, recipe, { row: row + 2, column: 0, as: "sentence" });
}

const SYRUPS = ["leicht", "mittel", "schwer", "zum Tränken", "zum Glasieren"];

/** Syrups on the shelf, fruit from the neighbours under them, and an ice made of it. */
function shelf(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Regal");
  put(sheet, 0, 0, "Sirupregal");
  putRow(sheet, 1, 0, [
    ...["Sirup", "g Zucker auf 100 g Wasser", "Zuckergehalt in Massen-%", "Saccharose (g)"],
    ...["Wasser (g)", "gefriert ab (°C)"],
  ]);
  SYRUPS.forEach((syrup, index) => {
    const [sugarGrams, waterGrams] = [150 + 60 * index + random.whole(0, 5) * 10, 500];
    const [, perWater, share, sugar, water] = putRow(sheet, 2 + index, 0, [
      ...[syrup, shown(Number((sugarGrams / 5).toFixed(1)), "0.0")],
      shown(Number(((100 * sugarGrams) / (sugarGrams + waterGrams)).toFixed(1)), "0.0"),
      ...[sugarGrams, waterGrams],
      shown(freezesAt(["sucrose", "water"], [sugarGrams, waterGrams]), "0.0"),
    ]) as [Spot, Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share });
  });
  note(kit, sheet, 8, 0, "Fruchtmark vom Nachbarhof, je 100 g laut Etikett:");
  const items = ["Schlehenmark vom Nachbarn", "Nachbars Zwetschgenröster"];
  const own = jars(
    kit,
    sheet,
    { row: 9, column: 0 },
    {
      headings: ["name", "Zucker", "Wasser", "Fett", "Eiweiß", "inert", "Allergene"],
      ...{ items, none: "keine" },
    },
  );
  const lines = [
    [items[0]!, 20 * random.whole(10, 20)],
    [items[1]!, 120],
    ["Wasser", 20 * random.whole(10, 15)],
    ["Dextrose-Monohydrat", 15],
  ] as const;
  const mix = addSheet(marked.book, "Fruchteis");
  putRow(mix, 0, 0, ["Fruchteis vom Nachbarhof"]);
  putRow(mix, 2, 0, ["Zutat", "Menge (g)"]);
  const rows = lines.map((each, index) => putRow(mix, 3 + index, 0, each));
  put(mix, 7, 0, "Summe");
  sumOf(kit, mix, { row: 7, column: 1 }, columnOf(rows, 1));
  const both = [0, 1].map((at) => span(columnOf(rows, at))).join(",");
  const call = shown(`=RIME.FREEZINGPOINT(${both},Regal!${own})`, "0.00");
  putRow(mix, 9, 0, ["Gefrierpunkt (°C)", call]);
  note(kit, mix, 11, 0, "Ernte im Oktober, Mark sofort einfrieren.");
  ofTheWeek(kit);
}

/** An ice in per cent with the lines' numbers at the right. */
function ofTheWeek(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Eis der Woche");
  const made = stillMet(perHundred(kit.make(1)[0]!));
  put(sheet, 0, 0, made.title);
  const heads = putRow(sheet, 1, 0, ["Zutat", "Prozent (m/m)", "Zeile"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 2 + index, 0, [name, made.grams[index], index + 1]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const row = 3 + rows.length;
  put(sheet, row, 0, "ergibt");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts, "0.0");
  const amountLabel = heads[1]!;
  const recipe = markRecipe(kit, made, { names, amounts, unit: "%", amountLabel, total });
  let next = say(sheet, recipe, { row: row + 2, column: 0 }, [
    { label: "Gefrierpunkt in °C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Wasser in %", states: "water", as: "typed", decimals: 1 },
    {
      label: "Eisanteil der Mischung bei −12 °C in %",
      ...{ states: "ice of mix", as: "typed", temperatureC: -12 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "serviert als" });
  tell(kit, sheet, recipe, { row: next, column: 0, as: "sentence" });
}

/** Books with jars and syrups of one's own. */
export const shelves: readonly Layout[] = [
  { name: "own jars, swirls and the ice under", language: "en", build: swirls },
  { name: "Sirupregal und Nachbars Fruchtmark", language: "de", build: shelf },
];
