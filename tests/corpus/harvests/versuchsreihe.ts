import { addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { changed, plainOf } from "../lodgers/swaps";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf } from "../strollers/words";
import { numbersUnder, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Vor der Verkostung sagen:",
  honey: "Honig, keine Proben für Kinder unter 12 Monaten.",
  alcohol: "Alkohol, keine Proben für Kinder, Schwangere und Fahrer.",
  nuts: "Ganze Nüsse, Erstickungsgefahr unter 5 Jahren.",
  egg: "Rohes Eigelb, auf 71 °C erhitzen oder pasteurisiertes nehmen.",
};

const FACTS: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["GP (°C)", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Wasser (g)", { states: "water", as: "formula", format: "0" }],
  ["gelöst (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Wasser gefroren bei −18 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 1 },
  ],
];

const DAYS = ["07.09.", "08.09.", "14.09.", "15.09.", "21.09."];

/** The start and four changes, a kilogram of each. */
function reihe(kit: Kit): MadeRecipe[] {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  const others = [
    changed(plain, 0.9),
    changed(plain, 0.75),
    changed(plain, 0.75, "dextrose monohydrate"),
    changed(plain, 0.5, "fructose"),
  ];
  const words = { Fruktose: "Fruchtzucker", Wasser: "Leitungswasser", Salz: "Speisesalz" };
  return [made, ...others].map((each) => called(perKilogram(each), words));
}

/** A trial in its row: answers at the left, amounts at the right. */
function versuch(
  sheet: CorpusSheet,
  recipe: ReturnType<typeof alongRow>,
  heads: readonly Spot[],
  row: number,
): void {
  FACTS.forEach(([, plan], at) => {
    const label = heads[2 + at]!;
    resultAt(sheet, recipe, label, { row, column: label.column }, plan, () => recipe.lines);
  });
  nameTarget(sheet, recipe, { row, column: 2 + FACTS.length });
}

/** What the tasters wrote. */
function verkostung(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Verkostung");
  put(sheet, 0, 0, "Verkostung, Schulnoten von 1 bis 6, vier Leute");
  const mark = (): number => kit.random.whole(10, 35) / 10;
  const warm = readings(kit, DAYS.length, [-14, -11]);
  const rows = DAYS.map((day, index) => [`V${index + 1}`, day, mark(), mark(), warm[index]]);
  const heads = ["Versuch", "am", "Süße", "Schmelz", "Probe (°C)"];
  const { heads: headings, columns } = table(sheet, { row: 2, column: 0 }, heads, rows);
  numbersUnder(kit, headings[4]!, columns[4]!, "temperature");
  note(kit, sheet, 10, 0, "Nach einer Woche im Froster alle noch einmal probieren.");
}

/** Trials under each other, the ingredients over the columns. */
function versuche(kit: Kit): void {
  const list = reihe(kit);
  const sheet = addSheet(kit.marked.book, "Versuche");
  put(sheet, 0, 0, `${list[0]!.title}, Versuchsreihe, je 1000 g Masse`);
  const labels = FACTS.map(([label]) => label);
  const heads = putRow(sheet, 3, 0, ["Versuch", "Datum", ...labels, "Ziel"]);
  const names = itemsOf(list);
  const first = heads.length + 1;
  const items = putRow(sheet, 3, first, names);
  const amountLabel = put(sheet, 2, first, "Einwaage in g");
  put(sheet, 3, first + names.length, "Summe");
  const recipes = list.map((made, index) => {
    const row = 4 + index;
    putRow(sheet, row, 0, [`V${index + 1}`, DAYS[index]]);
    const plan = { items, unit: "g", format: "0", amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    versuch(sheet, recipe, heads, row);
    return recipe;
  });
  const last = 4 + list.length;
  recipes.forEach((recipe, index) => {
    const row = last + 1 + index;
    const next = tellIn(sheet, recipe, { row, column: 1 }, VOICE);
    if (next > row) put(sheet, row, 0, `V${index + 1}`);
  });
  note(kit, sheet, last + 7, 0, "Alle Versuche mit derselben Maschine, 25 Minuten.");
  verkostung(kit);
}

/** A developer with a row for each trial. */
export const versuchsreihen: readonly Layout[] = [
  { name: "Entwicklung, Versuche in Zeilen und Werte links", language: "de", build: versuche },
];
