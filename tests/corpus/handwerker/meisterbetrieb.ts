import { a1, addSheet, fixed, put, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import { beside, listed, type Listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { VOICE_OF_A_SHOP, pricePerKg, readings, table } from "./words";

const OWN = { "Sahne 35 %": "Sahne 35 % Fett", Zucker: "Zucker fein", Wasser: "Trinkwasser" };

const HEADS = ["Pos.", "Rohstoff", "Rezeptur %", "Ansatz kg", "EK €/kg", "Warenwert €"];

const ANSWERS: readonly Said[] = [
  { label: "Gefrierpunkt °C", states: "freezing point", as: "typed" },
  { label: "Gefrierpunktserniedrigung K", states: "depression", as: "formula", format: "0.00" },
  {
    label: "Zucker in der Masse, %",
    ...{ states: "sugar share", as: "typed", decimals: 1 },
  },
  {
    label: "Eis im Wasseranteil bei −18 °C, %",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    label: "Eis in der Masse bei −18 °C, %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** Kilograms of the batch and their cost beside the per cent; gives both columns. */
function worked(kit: Kit, sheet: CorpusSheet, list: Listed, batch: Spot): readonly Spot[][] {
  const { heads, rows, amounts } = list;
  const kilos = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [batch] },
    content: (spot) => `=${a1(spot)}/100*${fixed(batch)}`,
  });
  const prices = columnOf(rows, 4);
  const costs = beside(kit, heads[5]!, kilos, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}*${a1(prices[index]!)}`,
  });
  return [kilos, costs];
}

/** One recipe in per cent on its sheet. */
function meister(kit: Kit, number: number, from: MadeRecipe): void {
  const made = called(largestFirst(from), OWN);
  const sheet = addSheet(kit.marked.book, `R${number}`);
  put(sheet, 0, 0, `Rezeptur R${number}`);
  put(sheet, 0, 2, made.title);
  const batch = given(kit, sheet, [1, 1], ["Ansatz", "kg", kit.random.pick([6, 8, 12])]);
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: HEADS,
      cells: (name, grams, index) => [
        ...[10 * (index + 1), name, shown(grams, "0.0"), undefined, pricePerKg(kit, name)],
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, names, amounts, end } = list;
  const [kilos, costs] = worked(kit, sheet, list, batch) as [Spot[], Spot[]];
  put(sheet, end + 1, 1, "Summe");
  const total = sumOf(kit, sheet, { row: end + 1, column: 2 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end + 1, column: 3 }, kilos, "0.000");
  sumOf(kit, sheet, { row: end + 1, column: 5 }, costs, "0.00");
  const lines = { names, amounts, alsoAmounts: kilos, total, amountLabel: heads[2]! } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "%" });
  strip(sheet, recipe, { row: end + 3, column: 1 }, ANSWERS);
  nameTarget(sheet, recipe, { row: end + 6, column: 1, label: "Ziel der Rezeptur" });
  tellIn(sheet, recipe, { row: end + 7, column: 1 }, VOICE_OF_A_SHOP);
}

/** Two recipes in per cent and the shop's cold places. */
function betrieb(kit: Kit): void {
  kit.make(2).forEach((made, index) => meister(kit, 301 + index, made));
  const sheet = addSheet(kit.marked.book, "Kühlstellen");
  put(sheet, 0, 0, "Kontrollblatt Kühlstellen, KW 23");
  const places = ["Vitrine links", "Vitrine rechts", "Schrank Backstube", "Zelle Keller"];
  const rows = places.map((place) => [place, kit.random.pick(["HB", "SW"])]);
  const heads = ["Kühlstelle", "Zeichen", "Soll (°C)", "Mo 6 Uhr (°C)", "Do 6 Uhr (°C)"];
  const [titles] = table(sheet, { row: 2, column: 0 }, heads, rows);
  readings(kit, sheet, titles![2]!, 4, [-18, -18]);
  readings(kit, sheet, titles![3]!, 4, [-20, -17]);
  readings(kit, sheet, titles![4]!, 4, [-20, -17]);
  note(kit, sheet, 8, 0, "Dichtung Zelle Keller bei Gelegenheit tauschen.");
}

/** A master confectioner's shop. */
export const meisterbetriebe: readonly Layout[] = [
  { name: "Meisterbetrieb, Rezeptur in Prozent und Ansatz", language: "de", build: betrieb },
];
