import { a1, addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { DEUTSCH, fetchedFrom, thermometer } from "./words";

const GARNISH = [
  ["Nocke", "1 Stk."],
  ["Crumble", "2 EL"],
  ["Kräuter", "3 Blatt"],
  ["Teller", "tief, gekühlt"],
];

const PLACES = ["Leitung", "Kühlhaus 2", "Schnapsschrank", "Trockenlager"] as const;

const said = (made: MadeRecipe): readonly Said[] => [
  {
    label: "Gefrierpkt.",
    ...{ inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  },
  { label: "Wasser gesamt", inCell: "g", states: "water", as: "formula", format: "0" },
  {
    label: "davon Eis bei -12 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  },
  { label: "gelöst", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  ...ofAlcohol(made, "reiner Alkohol", "g"),
];

/** How many eat today, how many the recipe is for. */
function covers(kit: Kit, sheet: CorpusSheet): readonly [persons: Spot, today: Spot] {
  const persons = putRow(sheet, 1, 0, ["Grundrezept für", 10, "Pers."])[1]!;
  const today = putRow(sheet, 2, 0, ["Reserviert heute", kit.random.whole(18, 64), "Pers."])[1]!;
  return [persons, today];
}

/** One dish of the station. */
function dish(kit: Kit, made: MadeRecipe, name: string): void {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, `${made.title} (Nocke zum Dessert)`);
  const [persons, today] = covers(kit, sheet);
  const list = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Grundrezept in g", "Ware", "Heute in g", "Woher"],
      cells: (item, grams, index) => [
        grams,
        item,
        undefined,
        fetchedFrom(made.lines[index]!, PLACES),
      ],
      ...{ name: 1, amount: 0 },
    },
  );
  const { heads, names, amounts, end } = list;
  const scaled = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [today, persons] },
    content: (spot) => `=${a1(spot)}*${fixed(today)}/${fixed(persons)}`,
  });
  const total = sumOf(kit, sheet, { row: end + 1, column: 0 }, amounts);
  put(sheet, end + 1, 1, "Masse");
  sumOf(kit, sheet, { row: end + 1, column: 2 }, scaled, "0");
  const lines = { names, amounts, total, alsoAmounts: scaled, amountLabel: heads[0]! };
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  put(sheet, 4, 5, "Anrichten");
  GARNISH.forEach((words, index) => putRow(sheet, 5 + index, 5, words));
  const next = say(sheet, recipe, { row: 11, column: 5 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Ausgabe" });
  tellIn(sheet, recipe, { row: end + 3, column: 0 }, DEUTSCH);
  note(
    kit,
    sheet,
    end + 4,
    0,
    kit.random.pick(["Nocken erst auf Abruf.", "Löffel in heißes Wasser."]),
  );
}

/** A dish a tab, then the fridges. */
function postenbuch(kit: Kit): void {
  const own = { Zucker: "Feinzucker", "Sahne 35 %": "Schlagsahne 35 %", Eigelb: "Eidotter" };
  const mades = kit.make(3).map((made) => called(perKilogram(made), own));
  mades.forEach((made, index) => dish(kit, made, `Dessert ${"ABC"[index]}`));
  const sheet = addSheet(kit.marked.book, "Kühlkette");
  putRow(sheet, 0, 0, ["Kontrolle KW 23", undefined, "Kürzel: siehe Dienstplan"]);
  thermometer(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      heads: ["Wochentag", "Kühlhaus 2, °C", "TK-Zelle, °C", "Becherschrank, °C"],
      lines: ["Di", "Mi", "Do", "Fr", "Sa", "So"],
      from: [
        [2, 5],
        [-23, -19],
        [-22, -18],
      ],
    },
  );
  note(kit, sheet, 10, 0, "Montag Ruhetag, da liest niemand ab.");
}

/** A restaurant's pastry station. */
export const postenbuecher: readonly Layout[] = [
  {
    name: "Postenbuch der Pâtisserie, Menge nach Reservierungen",
    language: "de",
    build: postenbuch,
  },
];
