import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { markSamples } from "../benches/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { kilos } from "../layouts/marking";
import type { Said } from "../layouts/parts";
import { input } from "../page";
import { grid, type Lines } from "../scholars/grid";
import { molarOf, particlesOf, typed, worked } from "../scholars/words";
import { ofAlcohol } from "../strollers/words";
import { dissolved } from "../solution";
import { VOICES } from "./voices";
import { iceOn, kiloPrice, lesson, SUGAR_ALCOHOLS, SUGARS } from "./words";

/** Je Zuckerart eine Zeile; die Konstante steht auf dem Blatt mit den Werten. */
const lines = (constant: Spot): Lines => ({
  name: typed("Zuckerart", ({ solute }) => solute.de),
  molar: typed("Molmasse (g/mol)", molarOf),
  particles: typed("Faktor i", particlesOf),
  mass: typed("Zugabe (g)", ({ grams }) => grams),
  water: typed("auf Wasser (g)", ({ waterGrams }) => waterGrams),
  given: worked("Wasser in kg", (at) => `${at("water")}/1000`, "0.000"),
  molality: worked(
    "Mol je kg Wasser",
    (at) => `${at("mass")}/${at("molar")}/${at("given")}`,
    "0.000",
  ),
  depression: worked(
    "senkt den Gefrierpunkt um (K)",
    (at) => `Werte!${fixed(constant)}*${at("particles")}*${at("molality")}`,
    "0.00",
    { fixed: [constant] },
  ),
  freezingPoint: worked("gefriert bei (°C)", (at) => `-1*${at("depression")}`, "0.00"),
});

/** Was man nachschlägt. */
function values(kit: Kit): Spot {
  const sheet = addSheet(kit.marked.book, "Werte");
  put(sheet, 0, 0, "Werte aus dem Tabellenbuch");
  const law = { label: "Kf Wasser (K·kg/mol)", bare: "Kf Wasser", value: 1.86, format: "0.00" };
  const constant = input(kit, sheet, { row: 2, column: 0 }, law);
  putRow(sheet, 3, 0, ["Schmelzwärme Eis (kJ/kg)", 334]);
  putRow(sheet, 4, 0, ["Wasser gefriert bei (°C)", 0]);
  return constant;
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser in der Masse", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    label: "Zucker auf 100 g Wasser",
    ...{ inCell: "g", states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  {
    label: "Eisanteil der Masse bei −15 °C",
    ...{ inCell: "%", states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** Was der Becher beim Schulfest kosten müsste. */
function perCup(kit: Kit, sheet: CorpusSheet, total: Spot, row: number): void {
  const words = { label: "Becher fasst (g)", bare: "Becher fasst", value: 80 };
  const cup = input(kit, sheet, { row, column: 7 }, words);
  const cups = shown(`=${a1(total)}/${a1(cup)}`, "0.0");
  const [, count] = putRow(sheet, row + 1, 7, ["Becher aus dem Ansatz", cups]);
  const cost = a1({ ...total, column: 4 });
  putRow(sheet, row + 2, 7, ["Ware je Becher (€)", shown(`=${cost}/${a1(count!)}`, "0.00")]);
  note(kit, sheet, row + 4, 7, "Preise vom Großmarkt, Januar");
}

/** Die Massen zweier Lerngruppen, jede mit ihren Kosten. */
function batch(kit: Kit, sheet: CorpusSheet, group: string, row: number): number {
  const words = { Zucker: "Kristallzucker", Saccharose: "Kristallzucker" };
  const made = called(kilos(kit.make(1)[0]!), words);
  putRow(sheet, row, 0, [group, made.title]);
  const { list, end } = iceOn(kit, sheet, made, {
    ...{ row: row + 1, column: 0, unit: "g" },
    columns: ["name", "amount", "unit", "price", "cost", "allergen"],
    ...{
      headings: {
        name: "Rohstoff",
        amount: "Menge",
        price: "€/kg",
        cost: "€",
        allergen: "Allergen",
      },
    },
    ...{ total: "Ansatz", said: [...SAID, ...ofAlcohol(made, "reiner Alkohol", "g")] },
    ...{
      priceOf: (_: Spot, index: number) => kiloPrice(kit, made, index),
      target: "Ziel",
      voice: VOICES.berufsschule,
    },
  });
  perCup(kit, sheet, list.recipe.total!, row + 1);
  return end + 2;
}

/** Zuckerarten gerechnet, dann zwei Massen der Klasse. */
function sugarKinds(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Zuckerarten");
  put(sheet, 0, 0, "Lernfeld Speiseeis: Wie stark senkt welche Zuckerart den Gefrierpunkt?");
  const solutes = [...SUGARS, ...SUGAR_ALCOHOLS.slice(0, 2), dissolved[1]!];
  const { list, tolerance } = lesson(kit, solutes, [250, 400, 500]);
  const constant = values(kit);
  const made = grid(kit, sheet, { row: 2, column: 0 }, lines(constant), list);
  const text = `Nur für verdünnte Lösungen: hier höchstens ${tolerance} K neben dem Messwert.`;
  markSamples(kit, made, list, put(sheet, made.end + 1, 0, text), { constant });
  note(kit, sheet, made.end + 3, 0, "Aufgabe 3: Welche Zuckerart nehmen Sie für weiches Eis?");
  const page = addSheet(kit.marked.book, "Massen");
  batch(kit, page, "Gruppe 2", batch(kit, page, "Gruppe 1", 0));
}

/** Blätter einer Berufsschule. */
export const zuckerarten: readonly Layout[] = [
  { name: "Berufsschule, Zuckerarten und zwei Massen", language: "de", build: sugarKinds },
];
