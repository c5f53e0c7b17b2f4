import { a1, addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { say, sumOf } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { pricesOf, weighed } from "./words";

const VOICE: Voice = {
  lead: "Aushang, Allergene:",
  honey: "Aushang: Honig, nicht unter 12 Monaten.",
  alcohol: "Aushang: Alkohol, nicht für Kinder, Schwangere und Fahrer.",
  nuts: "Aushang: ganze Nüsse, Erstickungsgefahr unter 5 Jahren.",
  egg: "Eigelb roh verarbeitet, daher auf 71 °C bringen oder pasteurisiert.",
};

const OWN = { Zucker: "Kristallzucker", Salz: "Speisesalz", Wasser: "Leitungswasser" };

/** Ein Blatt: links Prozent und Gramm von heute, rechts was daraus folgt. */
function sorte(kit: Kit, made: MadeRecipe, index: number): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, `S${index + 1}`);
  putRow(sheet, 0, 0, [made.title, undefined, "zuletzt geändert", ["März", "Mai", "Juli"][index]]);
  const words = {
    label: "Ansatz heute, g",
    bare: "Ansatz heute",
    value: random.pick([800, 1200, 2500]),
  };
  const batch = input(kit, sheet, { row: 2, column: 0 }, words);
  const { recipe, heads, amounts, end } = weighed(
    kit,
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Zutaten", "Anteil %", "heute g"],
      cells: (name, grams) => [name, shown(grams, "0.0")],
      ...{ name: 0, amount: 1, unit: "%", total: "zusammen", format: "0.0", also: 2 },
    },
  );
  const today = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=${a1(spot)}/100*${fixed(batch)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, today, "0");
  const next = say(sheet, recipe, { row: 4, column: 4 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Wasser in 100 g", inCell: "g", states: "water", as: "formula", format: "0.0" },
    { label: "Zucker je 100 g Wasser", inCell: "g", states: "sugar per 100 g water", as: "typed" },
    { label: "Zuckeranteil am Mix", inCell: "%", states: "sugar share", as: "typed", decimals: 1 },
    {
      ...{
        label: "gefrorenes Wasser in der Vitrine (−13 °C)",
        inCell: "%",
        states: "ice of water",
      },
      ...{ as: "typed", temperatureC: -13, decimals: 0 },
    },
    ...ofAlcohol(made, "Alkohol in 100 g", "g"),
  ]);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Soll" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
  const text = [
    "Erst ganz kalt in die Maschine.",
    "Über Nacht reifen.",
    "Im Winter halber Ansatz.",
  ];
  note(kit, sheet, end + 4, 0, text[index]!);
}

/** Was im Regal steht. */
function stockroom(kit: Kit, mades: readonly MadeRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Regal");
  put(sheet, 0, 0, "Regal und Kühlraum, gezählt am Monatsersten");
  const heads = putRow(sheet, 2, 0, ["Ware", "da, kg", "€ je kg", "Wert, €"]);
  const there = [...pricesOf(kit, mades)]
    .filter(([item]) => item !== OWN.Wasser)
    .map(([item, price], index): Spot => {
      const kilos = shown(kit.random.whole(1, 24) / 2, "0.0");
      return putRow(sheet, 3 + index, 0, [item, kilos, shown(price, "0.00")])[1]!;
    });
  const values = beside(kit, heads[3]!, there, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  const row = 3 + there.length;
  put(sheet, row, 0, "Warenwert");
  sumOf(kit, sheet, { row, column: 3 }, values, "0.00");
}

/** Drei Sorten in Prozent, je ein Blatt. */
function prozentblaetter(kit: Kit): void {
  const mades = kit.make(3).map((made) => called(hundred(made), OWN));
  mades.forEach((made, index) => sorte(kit, made, index));
  stockroom(kit, mades);
}

/** Prozentblätter einer kleinen Eisküche. */
export const prozentblaetterLayouts: readonly Layout[] = [
  { name: "Prozentblätter mit Ansatz von heute", language: "de", build: prozentblaetter },
];
