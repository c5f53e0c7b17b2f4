import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { sumOf, type Said } from "../layouts/parts";
import { input } from "../page";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { iceOn, kiloPrice, readings } from "./words";

interface Kind {
  readonly name: string;
  readonly title: string;
  readonly each: Spot;
}

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser insgesamt", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "Gelöstes insgesamt", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Wasser zu Eis bei −20 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -20, decimals: 0 },
  },
  ...ofAlcohol(made, "Alkohol insgesamt", "g"),
];

/** Vom Ansatz zum Stück; gibt die Zelle mit den Kosten eines Stücks. */
function perPiece(kit: Kit, sheet: CorpusSheet, total: Spot, cost: Spot): Spot {
  const { random } = kit;
  const at = (row: number) => ({ row, column: 7 });
  put(sheet, 2, 7, "Auf das Stück gerechnet");
  const mould = {
    label: "Masse je Form (g)",
    bare: "Masse je Form",
    value: random.pick([60, 75, 80]),
  };
  const form = input(kit, sheet, at(3), mould);
  const extras = shown(random.whole(6, 14) / 100, "0.00");
  const [, extra] = putRow(sheet, 4, 7, ["Stiel und Beutel (€)", extras]);
  const pieces = shown(`=${a1(total)}*1000/${a1(form)}`, "0");
  const [, count] = putRow(sheet, 5, 7, ["Stück aus dem Ansatz", pieces]);
  const one = shown(`=${a1(cost)}/${a1(count!)}+${a1(extra!)}`, "0.00");
  return putRow(sheet, 6, 7, ["Selbstkosten je Stück (€)", one])[1]!;
}

/** Eine Sorte auf ihrem Blatt, in Kilogramm. */
function kind(kit: Kit, made: MadeRecipe, index: number): Kind {
  const name = `Stiel ${index + 1}`;
  const sheet = addSheet(kit.marked.book, name);
  putRow(sheet, 0, 0, [name, made.title]);
  const { list, recipe, end } = iceOn(kit, sheet, made, {
    row: 2,
    column: 0,
    columns: ["name", "amount", "unit", "price", "cost"],
    headings: { name: "Zutat", amount: "Menge", price: "Preis €/kg", cost: "Betrag €" },
    ...{ unit: "kg", format: "0.000", total: "Ansatz", gap: 0 },
    priceOf: (_, at) => kiloPrice(kit, made, at),
    ...{ said: said(made), target: "Biss", voice: "pair" },
  });
  const cost = { sheet: name, row: list.totalRow, column: 4 };
  const costs = list.cells.get("cost")!;
  const heading = put(sheet, 2, 5, "% vom Betrag");
  const shares = beside(kit, heading, costs, {
    ...{ sheet, format: "0.0", fixed: [cost] },
    content: (spot) => `=100*${a1(spot)}/${fixed(cost)}`,
  });
  sumOf(kit, sheet, { row: list.totalRow, column: 5 }, shares, "0.0");
  const each = perPiece(kit, sheet, recipe.total!, cost);
  note(kit, sheet, end + 1, 0, "Formen vorher kalt stellen, Stiel nach 40 Minuten einstecken.");
  return { name, title: made.title, each };
}

const HOURS = [
  ["Mittwoch", "14–18 Uhr"],
  ["Freitag", "14–19 Uhr"],
  ["Samstag", "10–13 Uhr"],
] as const;

/** Preise am Fenster, was sich verkauft, und wann offen ist. */
function windowSheet(kit: Kit, kinds: readonly Kind[]): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Fenster");
  put(sheet, 0, 0, "Verkauf am Fenster, letzter Sommer");
  const heads = putRow(sheet, 2, 0, [
    ...["Sorte", "Selbstkosten €", "Preis €", "bleibt €", "Anteil am Verkauf (%)"],
  ]);
  const first = random.whole(30, 45);
  const second = random.whole(20, 30);
  const parts = [first, second, 100 - first - second];
  const rows = kinds.map(({ name, title, each }, index) => {
    const row = 3 + index;
    const own = shown(`='${name}'!${a1(each)}`, "0.00");
    const cells = putRow(sheet, row, 0, [title, own, shown(random.whole(18, 28) / 10, "0.00")]);
    const left = put(sheet, row, 3, shown(`=${a1(cells[2]!)}-${a1(cells[1]!)}`, "0.00"));
    return [left, put(sheet, row, 4, parts[index])];
  });
  marked.formulaColumns.push({ spots: columnOf(rows, 0), heading: heads[3]!, fixed: [] });
  const [end, spots] = [3 + rows.length, columnOf(rows, 1)];
  put(sheet, end, 0, "zusammen");
  const total = sumOf(kit, sheet, { row: end, column: 4 }, spots);
  marked.numberColumns.push({ spots, heading: heads[4]!, total, kind: "per cent" });
  const open = putRow(sheet, 2, 6, ["offen", "Uhrzeit", "Truhe um 15 Uhr (°C)"]);
  HOURS.forEach((line, index) => putRow(sheet, 3 + index, 6, [...line]));
  readings(kit, sheet, open[2]!, { count: HOURS.length, from: -22, to: -18 });
  note(kit, sheet, end + 2, 0, "Wechselgeld: 40 € in Münzen");
}

/** Eis am Stiel, je Sorte ein Blatt, dazu das Verkaufsfenster. */
function sticks(kit: Kit): void {
  const words = { Zucker: "Kristallzucker", Salz: "Meersalz", Honig: "Blütenhonig" };
  const mades = kit.make(3).map((made) => called(upTo(made, 3000), words));
  const kinds = mades.map((made, index) => kind(kit, made, index));
  windowSheet(kit, kinds);
}

/** Kalkulation von Eis am Stiel. */
export const stieleis: readonly Layout[] = [
  { name: "Eis am Stiel, Stückkosten und Verkaufsfenster", language: "de", build: sticks },
];
