import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf } from "../strollers/words";
import { aside, readings } from "./words";

const VOICE: Voice = {
  lead: "Allergenkarte:",
  honey: "Honig, nicht an Babys unter 12 Monaten.",
  alcohol: "Alkohol: nicht an Kinder, Schwangere, Fahrer.",
  nuts: "Ganze Nüsse, Verschluckgefahr unter 5 Jahren.",
  egg: "Rohes Eigelb, auf 71 °C bringen oder pasteurisiert verwenden.",
};

const OWN = {
  Zucker: "Feinkristallzucker",
  Vollmilch: "Vollmilch 3,5 %",
  Eigelb: "Eidotter",
  Zitronensaft: "Zitronensaft frisch",
  "Sahne 35 %": "Sahne 35 % Fett",
};

const ANSWERS: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["Wasser ges. [g]", { states: "water", as: "typed", decimals: 0 }],
  ["gelöst [g]", { states: "dissolved", as: "typed", decimals: 0 }],
  ["GP [°C]", { states: "freezing point", as: "formula", format: "0.0" }],
  [
    "Wasser ausgefroren bei −16 °C [%]",
    { states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  ],
  ["Eis in der Masse bei −16 °C [%]", { states: "ice of mix", as: "typed", temperatureC: -16 }],
];

/** One kind a row, the items over the columns, answers at the right. */
function kinds(kit: Kit, sheet: CorpusSheet): number {
  const mades = kit.make(4).map((made) => called(perKilogram(made), OWN));
  const amountLabel = put(sheet, 2, 0, "g für 1 kg Masse");
  const items = putRow(sheet, 2, 1, itemsOf(mades));
  const sum = 1 + items.length;
  put(sheet, 2, sum, "Σ g");
  const labels = ANSWERS.map(([words], at) => put(sheet, 2, sum + 1 + at, words));
  const after = sum + 1 + ANSWERS.length;
  putRow(sheet, 2, after, ["Konsistenz", "Service sagt an"]);
  mades.forEach((made, index) => {
    const row = 3 + index;
    put(sheet, row, 0, made.title);
    const plan = { items, unit: "g", format: "0", amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    ANSWERS.forEach(([, each], at) => {
      resultAt(sheet, recipe, labels[at]!, { row, column: sum + 1 + at }, each, () => recipe.lines);
    });
    if (made.target !== null) recipe.targets.push(put(sheet, row, after, made.target));
    tellIn(sheet, recipe, { row, column: after + 1 }, VOICE);
  });
  return 4 + mades.length;
}

const EVENTS = ["Taufe Wintergarten", "Tagung Saal 2", "Hochzeit", "Halbpension"];

/** How much has to be frozen for what is booked. */
function banquets(kit: Kit, sheet: CorpusSheet, top: number): number {
  const [label, portion] = putRow(sheet, top, 0, ["Nocke [g]", kit.random.pick([35, 40, 45])]);
  kit.marked.inputs.push({ label: label!, value: portion!, bare: "Nocke" });
  const heads = putRow(sheet, top + 2, 0, ["Anlass", "Gedecke", "Nocken je Gedeck", "Masse [kg]"]);
  const rows = EVENTS.map((event, index) => {
    const row = top + 3 + index;
    const guests = kit.random.whole(18, 120);
    const [, covers, each] = putRow(sheet, row, 0, [event, guests, kit.random.pick([1, 2, 3])]);
    const formula = `=${a1(covers!)}*${a1(each!)}*$B$${portion!.row + 1}/1000`;
    return [covers!, put(sheet, row, 3, shown(formula, "0.0"))];
  });
  const needed = columnOf(rows, 1);
  kit.marked.formulaColumns.push({ spots: needed, heading: heads[3]!, fixed: [portion!] });
  const end = top + 3 + EVENTS.length;
  put(sheet, end, 0, "Woche");
  [1, 3].forEach((column, at) => {
    const parts = columnOf(rows, at);
    const range = `${a1(parts[0]!)}:${a1(parts.at(-1)!)}`;
    const spot = put(sheet, end, column, shown(`=SUM(${range})`, column === 1 ? "0" : "0.0"));
    kit.marked.sums.push({ spot, parts });
  });
  return end + 2;
}

/** The pastry kitchen of a hotel: a week on one page. */
function hotel(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "KW 27");
  putRow(sheet, 0, 0, ["Patisserie", "Eis und Sorbet für die Bankette"]);
  const top = kinds(kit, sheet);
  const next = banquets(kit, sheet, top);
  const heads: Spot[] = aside(
    sheet,
    { row: top + 2, column: 6 },
    ["Tag", "Schockfroster [°C]", "Eisschrank [°C]", "Kürzel"],
    ["Mo", "Di", "Mi", "Do", "Fr"].map((day) => [
      ...[day, undefined, undefined, kit.random.pick(["he", "lu", "tz"])],
    ]),
  );
  readings(kit, sheet, heads[1]!, { count: 5, from: -38, to: -33, by: 2 });
  readings(kit, sheet, heads[2]!, { count: 5, from: -18, to: -15 });
  note(kit, sheet, next, 0, "Becher immer nur bis zum Strich füllen, Deckel beschriften.");
}

/** A hotel's pastry kitchen. */
export const hotels: readonly Layout[] = [
  { name: "Hotelpatisserie, Sorten in Zeilen und Bankette", language: "de", build: hotel },
];
