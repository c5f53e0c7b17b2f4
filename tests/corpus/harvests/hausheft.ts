import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { numbersUnder, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Achtung",
  honey: "Honig! Nicht für Kinder unter 12 Monaten.",
  alcohol: "Alkohol! Nicht für Kinder, nicht in der Schwangerschaft, nicht vor dem Fahren.",
  nuts: "Ganze Nüsse! Kinder unter 5 Jahren können daran ersticken.",
  egg: "Rohes Eigelb! Bis 71 °C rühren oder pasteurisiertes kaufen.",
};

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "friert ab", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  ...ofAlcohol(made, "Alkohol, rein", "g"),
  { label: "Wasser insgesamt", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    label: "vom Wasser Eis bei −18 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

const FROM = ["von Oma", "selbst probiert", "aus dem Urlaub", "von Nachbarin"];

/** A recipe on a quarter of a sheet; nobody needs a sum here. */
function viertel(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  [row, column]: readonly [number, number],
): void {
  putRow(sheet, row, column, [made.title, kit.random.pick(FROM)]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 1, column },
    { heads: ["Man nehme", "g"], cells: (item, grams) => [item, grams] },
  );
  const cells = { names, amounts, unit: "g", amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 1, column }, said(made));
  nameTarget(sheet, recipe, { row: next, column, label: "wird bei uns" });
  tellIn(sheet, recipe, { row: next + 1, column }, VOICE);
}

/** The freezer in the cellar. */
function keller(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Gefrierschrank");
  const inside = ["Gemüse", "Fleisch", "Brot, Kuchen", "Eis"];
  const cold = readings(kit, inside.length, [-22, -17]);
  const rows = inside.map((what, index) => [`Fach ${index + 1}`, what, cold[index]]);
  const heads = ["Fach", "Inhalt", "Thermometer (°C)"];
  const { heads: headings, columns } = table(sheet, { row: 0, column: 0 }, heads, rows);
  numbersUnder(kit, headings[2]!, columns[2]!, "temperature");
  putRow(sheet, 6, 0, ["abgetaut", "im März"]);
  putRow(sheet, 7, 0, ["Dichtung", "neu seit 2024"]);
}

/** Two recipes side by side, two under them. */
function hausheft(kit: Kit): void {
  const words = { Zucker: "Haushaltszucker", "Spirituose 40 % vol": "Wodka 40 % vol" };
  const [first, ...others] = kit.make(4).map((made) => called(made, words));
  const sheet = addSheet(kit.marked.book, "Eisrezepte");
  put(sheet, 0, 0, "Eisrezepte der Familie");
  viertel(kit, sheet, first!, [2, 0]);
  const places = [
    [2, 5],
    [18, 0],
    [18, 5],
  ] as const;
  others.forEach((made, index) => viertel(kit, sheet, made, places[index]!));
  note(kit, sheet, 34, 0, "Schüssel der Eismaschine am Vorabend einfrieren.");
  keller(kit);
}

/** A family with its recipes. */
export const haushefte: readonly Layout[] = [
  { name: "Hausheft, vier Eisrezepte auf einem Blatt", language: "de", build: hausheft },
];
