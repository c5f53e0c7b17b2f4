import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf } from "../strollers/words";
import { degrees, readings, table, worked } from "./words";

const VOICE: Voice = {
  lead: "enthält",
  honey: "Mit Honig, nicht für Kinder unter 12 Monaten (Krippe beachten).",
  alcohol: "Mit Alkohol, nur Lehrerzimmer, nicht für Kinder, Schwangere und Autofahrer.",
  nuts: "Ganze Nüsse, Kinder unter 5 Jahren können sich daran verschlucken (Vorschule beachten).",
  egg: "Rohes Eigelb, auf 71 °C erhitzen oder pasteurisiertes Eigelb nehmen.",
};

const ANGABEN: readonly Said[] = [
  { label: "fängt an zu gefrieren", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Wasser darin", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "Zuckeranteil", inCell: "%", states: "sugar share", as: "typed", decimals: 1 },
  {
    ...{ label: "vom Wasser gefroren bei −14 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  },
];

const GERICHTE = [
  "Linseneintopf",
  "Nudeln, Tomate",
  "Ofenkartoffel",
  "Gemüsecurry",
  "Fischstäbchen",
];

/** The week; gives the cells of what is needed on the days with ice. */
function wochenplan(kit: Kit, mades: readonly MadeRecipe[]): Spot[] {
  const sheet = addSheet(kit.marked.book, "KW 23");
  put(sheet, 0, 0, "Mensa, Kalenderwoche 23");
  const nachtisch = ["Obst", mades[0]!.title, "Quark", mades[1]!.title, "Obst"];
  const { heads, rows } = table(
    sheet,
    { row: 2, column: 0 },
    ["Tag", "Mittag", "Nachtisch", "Anmeldungen", "g je Schüler", "gesamt kg"],
    ["Mo", "Di", "Mi", "Do", "Fr"].map((day, index) => [
      ...[day, GERICHTE[index]!, nachtisch[index]!, kit.random.whole(140, 260)],
      ...[index % 2 === 0 ? 120 : 70],
    ]),
  );
  const needed = rows.map(([, , , count, grams]) =>
    put(sheet, count!.row, 5, shown(`=${a1(count!)}*${a1(grams!)}/1000`, "0.0")),
  );
  kit.marked.formulaColumns.push({ spots: needed, heading: heads[5]!, fixed: [] });
  put(sheet, 8, 2, "Essen in der Woche");
  sumOf(
    kit,
    sheet,
    { row: 8, column: 3 },
    rows.map((cells) => cells[3]!),
  );
  const fridge = ["Mo", "Mi", "Fr"].map((day) => [day, degrees(kit, 3, 6), degrees(kit, -21, -18)]);
  const heading = ["Prüfung", "Kühlschrank °C", "Truhe °C"];
  readings(
    kit,
    sheet,
    { row: 11, column: 0 },
    { heads: heading, rows: fridge, temperatures: [1, 2] },
  );
  note(kit, sheet, 16, 0, "Anmeldungen bis 8 Uhr, danach nur noch Suppe.");
  return [needed[1]!, needed[3]!];
}

/** A dessert's sheet: what was tried out, and what the day needs. */
function nachtisch(kit: Kit, made: MadeRecipe, day: string, need: Spot): MarkedRecipe {
  const sheet = addSheet(kit.marked.book, `Nachtisch ${day}`);
  put(sheet, 0, 0, made.title);
  const kilos = worked(sheet, { row: 1, column: 0 }, [
    ...([
      "Heute zu machen (kg)",
      `=${calledFrom({ ...need, sheet: sheet.name }, need)}`,
      "0.0",
    ] as const),
  ]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    { heads: ["Zutat", "Probe (g)", "Heute (g)", "erl."], cells: (name, grams) => [name, grams] },
  );
  put(sheet, end, 0, "zusammen");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "#,##0", fixed: [kilos, total] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}*${fixed(kilos)}*1000`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "#,##0");
  const cells = { names, amounts, alsoAmounts, unit: "g", total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[1]! });
  put(sheet, end + 2, 0, "Von der Probe:");
  const next = say(sheet, recipe, { row: end + 3, column: 0 }, ANGABEN);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "gedacht als" });
  return recipe;
}

/** The notice at the hatch. */
function aushang(sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 0, 0, "Aushang an der Ausgabe: Eis in dieser Woche");
  recipes.forEach((recipe, index) => {
    putRow(sheet, 2 + index, 0, [["Dienstag", "Donnerstag"][index], recipe.made.title]);
    tellIn(sheet, recipe, { row: 2 + index, column: 2 }, VOICE);
  });
}

/** A school canteen: the week, two desserts, the notice. */
function mensa(kit: Kit): void {
  const words = { Zucker: "Haushaltszucker", Wasser: "Leitungswasser", Banane: "Bananen" };
  const sober = (made: MadeRecipe): boolean => !isAlcoholic(made);
  const mades = madeOf(kit, 2, sober).map((made) => called(made, words));
  const [tuesday, thursday] = wochenplan(kit, mades);
  const first = nachtisch(kit, mades[0]!, "Di", tuesday!);
  const second = nachtisch(kit, mades[1]!, "Do", thursday!);
  aushang(addSheet(kit.marked.book, "Aushang"), [first, second]);
}

/** Sheets of a school canteen. */
export const schulmensen: readonly Layout[] = [
  {
    name: "Schulmensa, Wochenplan und Eis am Dienstag und Donnerstag",
    language: "de",
    build: mensa,
  },
];
