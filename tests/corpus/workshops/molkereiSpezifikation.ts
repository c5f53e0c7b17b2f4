import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { readings, WARNT } from "./words";

const KENNWERTE: readonly Said[] = [
  { label: "Gefrierbeginn", inCell: "°C", states: "freezing point", as: "formula", format: "0.00" },
  {
    ...{ label: "Gefrierpunktserniedrigung", inCell: "K" },
    ...{ states: "depression", as: "typed", decimals: 2 },
  },
  {
    ...{ label: "Wassergehalt auf 100 g", inCell: "g" },
    ...{ states: "water", as: "formula", format: "0.0" },
  },
  {
    ...{ label: "Zuckergehalt der Masse", inCell: "%" },
    ...{ states: "sugar share", as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Eisanteil der Masse bei −18 °C", inCell: "%" },
    ...{ states: "ice of mix", as: "formula", temperatureC: -18 },
  },
];

/** The figures, the ice for the temperature of the store over the table. */
const kennwerteBei = (at: Spot): readonly Said[] =>
  KENNWERTE.map((each) =>
    each.states.startsWith("ice")
      ? { ...each, label: "Eisanteil der Masse im Tiefkühllager", temperature: at }
      : each,
  );

/** The head of the form; gives the charge and the temperature of the store. */
function kopf(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, nummer: number) {
  putRow(sheet, 0, 0, ["SPEZIFIKATION", `Nr. ${nummer}`, undefined, "Stand: 4. März"]);
  putRow(sheet, 1, 0, ["Produkt", made.title]);
  const charge = input(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      ...{ label: "Chargengröße (kg)", bare: "Chargengröße" },
      value: kit.random.pick([60, 80, 120, 250]),
    },
  );
  const lager = input(
    kit,
    sheet,
    { row: 3, column: 0 },
    {
      ...{ label: "Tiefkühllager, Soll (°C)", bare: "Tiefkühllager, Soll", value: -18 },
    },
  );
  return { charge, lager };
}

/** One product: what it is made of, what is measured, how it is kept. */
function blatt(kit: Kit, made: MadeRecipe, at: number): void {
  const sheet = addSheet(kit.marked.book, `Spez ${at + 1}`);
  const { charge, lager } = kopf(kit, sheet, made, 310 + at);
  put(sheet, 5, 0, "1. Zusammensetzung");
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 6, column: 0 },
    {
      heads: ["Rohstoff", "Massenanteil (%)", "je Charge (kg)"],
      cells: (name, grams) => [name, shown(grams, "0.0")],
    },
  );
  const scaled = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [charge] },
    content: (spot) => `=${a1(spot)}/100*${fixed(charge)}`,
  });
  put(sheet, end, 0, "zusammen");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, scaled, "0.000");
  const share = { spots: amounts, heading: heads[1]!, total, kind: "per cent" } as const;
  kit.marked.numberColumns.push(share);
  const cells = { names, amounts, alsoAmounts: scaled, unit: "%", total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[1]! });
  put(sheet, end + 2, 0, "2. Kennwerte");
  const known = [...kennwerteBei(lager), ...ofAlcohol(made, "Reinalkohol auf 100 g", "g")];
  const next = say(sheet, recipe, { row: end + 3, column: 0 }, known);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Beschaffenheit beim Verzehr" });
  put(sheet, next + 2, 0, "3. Kennzeichnung");
  const last = tellIn(sheet, recipe, { row: next + 3, column: 0 }, WARNT);
  readings(
    kit,
    sheet,
    { row: 6, column: 4 },
    {
      heads: ["Lagerkontrolle", "Ist (°C)"],
      when: ["KW 10", "KW 11", "KW 12", "KW 13"],
      tenths: [-214, -183],
    },
  );
  note(kit, sheet, last + 1, 0, "Freigabe durch die Betriebsleitung, Ablage im grünen Ordner.");
}

/** A dairy that writes a specification for each product. */
function molkerei(kit: Kit): void {
  const own = { Zucker: "Kristallzucker", Vollmilch: "Milch 3,5 %", Wasser: "Trinkwasser" };
  kit.make(2).forEach((made, at) => blatt(kit, called(hundred(largestFirst(made)), own), at));
}

/** A dairy's specification sheets. */
export const molkereiSpezifikationen: readonly Layout[] = [
  { name: "Molkerei, Spezifikation mit Kennwerten und Charge", language: "de", build: molkerei },
];
