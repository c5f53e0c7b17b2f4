import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { given } from "../lodgers/words";
import { beside, listed } from "../newcomers/words";
import type { ResultPlan } from "../results";
import { temperatures } from "../strollers/words";
import { VOICE_OF_A_TEACHER, table } from "./words";

const OWN = { "Sahne 35 %": "Schlagsahne 35 %", Zucker: "Kristallzucker", Honig: "Blütenhonig" };

const EVENING = [
  ["18:00", "Begrüßung, Hände waschen"],
  ["18:20", "Masse ansetzen"],
  ["19:10", "in die Maschine"],
  ["20:00", "Hauptgang"],
  ["21:15", "Eis ausgeben"],
];

/** How much is wanted tonight; gives the factor's cell and the freezer's temperature. */
function wanted(kit: Kit, sheet: CorpusSheet, batch: string) {
  const { random } = kit;
  const portion = given(kit, sheet, [2, 0], ["Portion pro Nase", "g", random.pick([90, 100, 120])]);
  const [, guests] = putRow(sheet, 3, 0, ["Nasen am Tisch", random.whole(9, 16)]);
  const formula = `=${a1(portion)}*${a1(guests!)}/${batch}`;
  const [, factor] = putRow(sheet, 4, 0, ["Faktor", shown(formula, "0.00")]);
  const temperatureC = random.pick([-16, -18]);
  const temperature = given(kit, sheet, [5, 0], ["Gefrierschrank", "°C", temperatureC]);
  return { factor: factor!, temperature, temperatureC };
}

const TOP = 7;

type Freezer = Required<Pick<ResultPlan, "temperature" | "temperatureC">>;

/** What is said of the ice, the freezer's temperature read from its cell. */
const answersFor = (freezer: Freezer): readonly Said[] => [
  { label: "fängt an zu frieren (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Gefrierpunktserniedrigung (K)", states: "depression", as: "formula" },
  {
    ...{ label: "davon im Gefrierschrank Eis (% des Wassers)", format: "0" },
    ...{ states: "ice of water", as: "formula", ...freezer },
  },
  { label: "Wasser im Rezept, alles zusammen (g)", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "Zucker auf 100 g Wasser (g)", decimals: 1 },
    ...{ states: "sugar per 100 g water", as: "typed" },
  },
];

/** The evening's ice, scaled for those who come, and the evening's course beside it. */
function kochabend(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Freitag");
  const made = called(kit.make(1)[0]!, OWN);
  put(sheet, 0, 0, `Männerkochrunde, Nachtisch: ${made.title}`);
  const totalSpot = { sheet: sheet.name, row: TOP + 1 + made.names.length, column: 1 };
  const { factor, ...freezer } = wanted(kit, sheet, a1(totalSpot));
  const list = listed(
    sheet,
    made,
    { row: TOP, column: 0 },
    {
      heads: ["Was", "Rezept (g)", "Heute (g)", "Wer bringt's"],
      cells: (name, grams) => [name, grams],
    },
  );
  const { heads, names, amounts, end } = list;
  const format = "0";
  const today = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format, fixed: [factor] },
    content: (spot) => `=${a1(spot)}*${fixed(factor)}`,
  });
  names.forEach((spot) => {
    put(sheet, spot.row, 3, kit.random.pick(["Uli", "Benno", "Theo", "Kasse"]));
  });
  put(sheet, end, 0, "zusammen");
  const total = sumOf(kit, sheet, totalSpot, amounts);
  sumOf(kit, sheet, { row: end, column: 2 }, today, format);
  const lines = { names, amounts, alsoAmounts: today, total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, answersFor(freezer));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "soll werden" });
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE_OF_A_TEACHER);
  around(kit, sheet, next + 3);
}

/** The course of the evening at the right, and what the freezer showed. */
function around(kit: Kit, sheet: CorpusSheet, row: number): void {
  const rows = EVENING.map((each, index) =>
    index === 0 ? each : [...each, shown(-kit.random.whole(32, 37) / 2, "0.0")],
  );
  const heads = ["Uhr", "Ablauf", "Anzeige am Schrank (°C)"];
  const [titles, ...lines] = table(sheet, { row: TOP, column: 6 }, heads, rows);
  const shownAt = lines.flatMap((cells): Spot[] => cells.slice(2));
  temperatures(kit, titles![2]!, shownAt);
  note(kit, sheet, row, 0, "Beim letzten Mal war's allen zu süß? Nein, nur dem Benno.");
}

/** Men who cook on Fridays. */
export const kochabende: readonly Layout[] = [
  { name: "Kochrunde, Rezept auf die Nasen umgerechnet", language: "de", build: kochabend },
];
