import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { degrees, pricePerKg, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Aufs Becherschild: enthält",
  honey: "Honig, nicht geeignet für Kinder unter 12 Monaten.",
  alcohol: "Alkohol, nicht für Kinder, Schwangere und vor dem Autofahren.",
  nuts: "Ganze Nüsse, Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb, Masse auf 71 °C erhitzen oder pasteurisiertes Eigelb.",
};

const GERECHNET: readonly Said[] = [
  { label: "Gefrierpunkt [°C]", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Erniedrigung [K]", states: "depression", as: "typed", decimals: 2 },
  {
    label: "gefrorenes Wasser bei −18 °C [%]",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  { label: "Zucker in der Masse [%]", states: "sugar share", as: "typed", decimals: 1 },
];

interface Sorte {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** A sort that runs across: names, kilograms, prices, costs and shares below each other. */
function quer(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): Sorte {
  const labels = ["Rohware", "kg", "€/kg", "€", "Anteil am Preis"];
  const heads = labels.map((label, index) => put(sheet, row + 1 + index, 0, label));
  put(sheet, row, 0, made.title);
  const names = putRow(sheet, row + 1, 1, made.names);
  const kilos = made.grams.map((grams) => shown(inUnit(grams, "kg"), "0.000"));
  const amounts = putRow(sheet, row + 2, 1, kilos);
  const prices = putRow(
    sheet,
    row + 3,
    1,
    made.names.map((_, index) => shown(pricePerKg(kit, made, index), "0.00")),
  );
  const costs = amounts.map((spot, index) =>
    put(sheet, row + 4, spot.column, shown(`=${a1(spot)}*${a1(prices[index]!)}`, "0.00")),
  );
  const last = 1 + names.length;
  put(sheet, row + 1, last, "Kessel");
  const total = sumOf(kit, sheet, { row: row + 2, column: last }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row: row + 4, column: last }, costs, "0.00");
  const shares = costs.map((spot) =>
    put(sheet, row + 5, spot.column, shown(`=${a1(spot)}/${fixed(cost)}`, "0.0%")),
  );
  sumOf(kit, sheet, { row: row + 5, column: last }, shares, "0.0%");
  kit.marked.formulaColumns.push({ spots: costs, heading: heads[3]!, fixed: [] });
  kit.marked.formulaColumns.push({ spots: shares, heading: heads[4]!, fixed: [cost] });
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "kg", amountLabel: heads[1]!, total },
  });
  strip(sheet, recipe, { row: row + 7, column: 0 }, GERECHNET);
  put(sheet, row + 7, 5, "gewünscht");
  nameTarget(sheet, recipe, { row: row + 8, column: 5 });
  tellIn(sheet, recipe, { row: row + 9, column: 0 }, VOICE);
  return { recipe, cost };
}

/** What a cup of each costs, on a sheet of its own. */
function becher(kit: Kit, sorten: readonly Sorte[]): void {
  const sheet = addSheet(kit.marked.book, "Becher");
  putRow(sheet, 0, 0, ["Bechergröße (kg)", shown(0.15, "0.000")]);
  const label = { sheet: sheet.name, row: 0, column: 0 };
  const size = { sheet: sheet.name, row: 0, column: 1 };
  kit.marked.inputs.push({ label, value: size, bare: "Bechergröße" });
  const { heads, rows } = table(
    sheet,
    { row: 2, column: 0 },
    ["Sorte", "Ware je Becher (€)", "Becher, Deckel (€)", "Ladenpreis (€)", "bleibt (€)"],
    sorten.map(({ recipe: { made, total }, cost }) => {
      const from = (spot: Spot) => `Kessel!${a1(spot)}`;
      const ware = `=${from(cost)}/${from(total!)}*${fixed(size)}`;
      const price = kit.random.pick([2.9, 3.2, 3.5]);
      return [made.title, ...[ware, 0.19, price].map((each) => shown(each, "0.00"))];
    }),
  );
  const left = rows.map(([, ware, cup, price]) =>
    put(sheet, ware!.row, 4, shown(`=${a1(price!)}-${a1(ware!)}-${a1(cup!)}`, "0.00")),
  );
  kit.marked.formulaColumns.push({ spots: left, heading: heads[4]!, fixed: [] });
  const times: readonly (readonly string[])[] = [
    ["Mittwoch", "15–18 Uhr"],
    ["Freitag", "9–18 Uhr"],
    ["Samstag", "8–13 Uhr"],
  ];
  table(sheet, { row: 2, column: 6 }, ["Hofladen", "offen"], times);
  const days = ["Mi", "Fr", "Sa"].map((day) => [
    day,
    degrees(kit, -21, -17),
    degrees(kit, -20, -16),
  ]);
  const heading = ["gelesen", "Regal oben °C", "Regal unten °C"];
  readings(kit, sheet, { row: 9, column: 0 }, { heads: heading, rows: days, temperatures: [1, 2] });
  note(kit, sheet, 14, 0, "Etikettenrolle reicht noch bis zu den Ferien.");
}

/** A farm's cold shelf: four kettles that run across, the cups made of them. */
function hof(kit: Kit): void {
  const words = { Zucker: "Rübenzucker", Wasser: "Leitungswasser", Walnüsse: "Walnusskerne" };
  const sheet = addSheet(kit.marked.book, "Kessel");
  put(sheet, 0, 0, "Hofeis, was in den Kessel kommt");
  const mades = kit.make(4).map((made) => called(upTo(made, 3000), words));
  becher(
    kit,
    mades.map((made, index) => quer(kit, sheet, made, 2 + 12 * index)),
  );
}

/** Sheets of a farm's cold shelf. */
export const hofkuehlregale: readonly Layout[] = [
  { name: "Hofeis, vier Kessel quer und die Becher", language: "de", build: hof },
];
