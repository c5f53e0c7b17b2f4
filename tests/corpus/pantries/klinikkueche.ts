import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { allergensOf, cautionsIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { degrees, readings, table, worked } from "./words";

const VOICE: Voice = {
  lead: "",
  honey: "Honig: Säuglingen und Kindern unter 12 Monaten nicht ausgeben.",
  alcohol: "Alkohol: keine Ausgabe an Kinder, Schwangere und Ambulanz (Autofahrer).",
  nuts: "Ganze Nüsse: keine Ausgabe an Kinder unter 5 Jahren (Erstickungsgefahr).",
  egg: "Rohes Eigelb: Masse auf 71 °C erhitzen oder pasteurisiertes Eigelb verwenden.",
};

const STATIONEN = ["Innere 1", "Innere 2", "Chirurgie", "Orthopädie", "HNO", "Reha", "Kasino"];

const WERTE: readonly Said[] = [
  { label: "Gefrierbeginn (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser je kg Masse (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Zuckerarten, Anteil der Masse (%)", states: "sugar share", as: "typed", decimals: 1 },
  {
    label: "Eis in der Masse bei −12 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** What the wards have ordered; gives the sum of the portions. */
function bestellung(kit: Kit): Spot {
  const sheet = addSheet(kit.marked.book, "Stationen");
  const { random } = kit;
  put(sheet, 0, 0, "Abruf Nachtisch kalt, Donnerstag");
  const { heads, rows } = table(
    sheet,
    { row: 2, column: 0 },
    ["Station", "Vollkost", "Leichte Kost", "Weiche Kost", "Portionen"],
    STATIONEN.map((station) => [
      ...[station, random.whole(6, 22), random.whole(2, 12), random.whole(0, 6)],
    ]),
  );
  const lines = rows.map((cells) => {
    const place = { row: cells[0]!.row, column: 4 };
    return sumOf(kit, sheet, place, cells.slice(1));
  });
  kit.marked.formulaColumns.push({ spots: lines, heading: heads[4]!, fixed: [] });
  const end = 3 + STATIONEN.length;
  put(sheet, end, 0, "Haus gesamt");
  [1, 2, 3].forEach((at) => sumOf(kit, sheet, { row: end, column: at }, columnOf(rows, at)));
  note(kit, sheet, end + 2, 0, "Nachmeldungen nur telefonisch bis 9:30 Uhr.");
  return sumOf(kit, sheet, { row: end, column: 4 }, lines);
}

/** What has to be declared, each in a row of its own. */
function kennzeichnung(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  const allergens = allergensOf(recipe.made);
  const cautions = cautionsIn(recipe.made, VOICE);
  let next = row;
  const add = (label: string, words: string) => {
    if (words !== "") recipe.flags.push(...putRow(sheet, next++, 0, [label, words]));
  };
  add("Allergene", allergens);
  add("Ausgabe", cautions);
  return next;
}

/** The recipe for a kilogram and for the whole house. */
function ansatz(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, factor: Spot): MarkedRecipe {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 8, column: 0 },
    {
      heads: ["Zutat", "1 kg Masse (g)", "Ansatz Haus (g)", "Los-Nr.", "MHD"],
      cells: (name, grams) => {
        const batch = `L${kit.random.whole(1000, 9999)}`;
        return [name, grams, ...(name === "Trinkwasser" ? [] : [undefined, batch, "12/2026"])];
      },
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [factor] },
    content: (spot) => `=${a1(spot)}*${fixed(factor)}`,
  });
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const amountLabel = heads[1]!;
  return markRecipe(kit, made, { names, amounts, alsoAmounts, unit: "g", amountLabel, total });
}

/** A hospital's kitchen: the wards' portions, and the mix that they need. */
function klinik(kit: Kit): void {
  const words = { Vollmilch: "Vollmilch 3,5 %", Zucker: "Kristallzucker", Wasser: "Trinkwasser" };
  const made = called(perKilogram(kit.make(1)[0]!), words);
  const portions = bestellung(kit);
  const sheet = addSheet(kit.marked.book, "Ansatz");
  putRow(sheet, 0, 0, ["Rezeptur", made.title]);
  const portion = { label: "Portion (g)", bare: "Portion", value: 65 };
  const size = input(kit, sheet, { row: 2, column: 0 }, portion);
  const loss = { label: "Zuschlag für Verlust (%)", bare: "Zuschlag für Verlust", value: 4 };
  const extra = input(kit, sheet, { row: 3, column: 0 }, loss);
  const all = worked(sheet, { row: 4, column: 0 }, [
    "Portionen",
    `=Stationen!${a1(portions)}`,
    "0",
  ]);
  const mass = `=${a1(all)}*${a1(size)}*(1+${a1(extra)}/100)/1000`;
  const factor = worked(sheet, { row: 5, column: 0 }, ["Masse, kg", mass, "0.00"]);
  const recipe = ansatz(kit, sheet, made, factor);
  const { row } = recipe.total!;
  const next = say(sheet, recipe, { row: row + 2, column: 0 }, WERTE);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Ausgabe als" });
  kennzeichnung(sheet, recipe, next + 1);
  const times = ["6:00", "10:00", "14:00", "18:00"];
  const rows = times.map((time) => [
    time,
    degrees(kit, -21, -18),
    shown(kit.random.whole(3, 6), "0.0"),
  ]);
  const heads = ["Uhrzeit", "TK-Raum °C", "Kühlraum °C"];
  readings(kit, sheet, { row: 8, column: 7 }, { heads, rows, temperatures: [1, 2] });
}

/** Sheets of a hospital's kitchen. */
export const klinikkuechen: readonly Layout[] = [
  { name: "Klinikküche, Abruf der Stationen und Ansatz", language: "de", build: klinik },
];
