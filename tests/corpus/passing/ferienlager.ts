import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { answersDown, placesOf, type Answer } from "../regulars/columns";
import { eurosPerKg } from "../strangers/preise";
import { about, declare, forChildren } from "./words";

const DAYS = ["Montag", "Dienstag", "Donnerstag", "Freitag"];
const FIRST = 4;
const ANSWERS: readonly Answer[] = [
  ["Gefrierpunkt der Mischung (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Wasser darin (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Gelöstes darin (g)", { states: "dissolved", as: "formula", format: "0" }],
  ["Zucker, Anteil an der Mischung (%)", { states: "sugar share", as: "typed" }],
  [
    "Vom Wasser gefroren bei −18 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

/** One day down its column; gives the temperature of the chest that morning. */
function day(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  column: number,
  names: readonly Spot[],
) {
  put(sheet, FIRST - 2, column, made.title);
  const label = put(sheet, FIRST - 1, column, `${DAYS[column - 1]} (g)`);
  const at = placesOf(sheet, names, made.names);
  const amounts = at.map((item, index) => put(sheet, FIRST + item, column, made.grams[index]));
  const all = names.map((spot) => ({ ...spot, column }));
  const end = FIRST + names.length;
  const total = sumOf(kit, sheet, { row: end, column }, all);
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((item) => names[item]!), amounts, unit: "g", amountLabel: label, total },
    shared: true,
  });
  const lines = `${absolute(span(names))},${span(all)}`;
  answersDown(sheet, recipe, ANSWERS, { row: end + 2, column, labels: 0 }, lines);
  const next = end + 2 + ANSWERS.length;
  nameTarget(sheet, recipe, { row: next, column });
  declare(sheet, recipe, { row: next + 1, column }, "Enthält");
  return put(sheet, next + 2, column, shown(-kit.random.whole(32, 42) / 2, "0.0"));
}

/** What the week takes and costs, right of the days. */
function shopping(
  kit: Kit,
  sheet: CorpusSheet,
  items: readonly string[],
  heads: readonly Spot[],
): void {
  const names = items.map((_, index) => ({ sheet: sheet.name, row: FIRST + index, column: 0 }));
  const grams = beside(kit, heads[0]!, names, {
    ...{ sheet, format: "0" },
    content: ({ row }) => `=SUM(B${row + 1}:E${row + 1})`,
  });
  grams.forEach((spot) => {
    const parts = DAYS.map((_, index) => ({ ...spot, column: 1 + index }));
    kit.marked.sums.push({ spot, parts });
  });
  const end = FIRST + names.length;
  sumOf(kit, sheet, { row: end, column: 5 }, grams, "0");
  items.forEach((name, index) =>
    put(sheet, FIRST + index, 6, shown(eurosPerKg(kit.random, name), "0.00")),
  );
  const costs = beside(kit, heads[2]!, grams, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 6 })}`,
  });
  sumOf(kit, sheet, { row: end, column: 7 }, costs, "0.00");
}

/** Four days beside each other, the shopping at the right. */
function lager(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Eiswoche");
  put(sheet, 0, 0, "Ferienlager, zweite Woche: jeden Nachmittag Eis");
  const mades = forChildren(kit, 4).map((made) => about(made, 4000));
  const items = [...new Set(mades.flatMap((made) => made.names))];
  put(sheet, FIRST - 1, 0, "Lebensmittel");
  const heads = putRow(sheet, FIRST - 1, 5, ["Woche (g)", "€ je kg", "Kosten (€)"]);
  const names = items.map((item, index) => put(sheet, FIRST + index, 0, item));
  const end = FIRST + names.length;
  put(sheet, end, 0, "Kessel voll");
  ANSWERS.forEach(([label], index) => put(sheet, end + 2 + index, 0, label));
  const next = end + 2 + ANSWERS.length;
  put(sheet, next, 0, "Geplant als");
  put(sheet, next + 1, 0, "Für die Zeltliste");
  const heading = put(sheet, next + 2, 0, "Truhe am Morgen (°C)");
  const chests = mades.map((made, index) => day(kit, sheet, made, 1 + index, names));
  marked.numberColumns.push({ spots: chests, heading, total: null, kind: "temperature" });
  shopping(kit, sheet, items, heads);
  note(kit, sheet, next + 4, 0, "Mittwoch ist Wandertag, da gibt es Melone.");
}

/** The plan of a week. */
export const lagerwoche: readonly Layout[] = [
  { name: "Ferienlager, Eiswoche mit Einkauf", language: "de", build: lager },
];
