import { callFunction } from "../../../src/worksheet/callFunction";
import { addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { massOf, type MadeRecipe } from "../recipes";
import { beside, lines, under } from "../strangers/zeilen";
import { alcoholIn, temperatures } from "../visitors/lines";
import { attempts } from "./versuche";

const SPOONS = [
  ["metric cup", "Becher", 0.5, 6, 4],
  ["EL", "EL", 1, 10, 1],
  ["TL", "TL", 0.5, 6, 2],
] as const;

/** A count as a cook writes it: 2 ¾. */
function inQuarters(count: number): string {
  const whole = Math.floor(count);
  const part = ["", "¼", "½", "¾"][4 * (count - whole)]!;
  return [...(whole > 0 ? [whole] : []), ...(part === "" ? [] : [part])].join(" ");
}

/** About how many cups or spoons of it that is; off the scale where they would not do. */
function measured(name: string, grams: number): string {
  for (const [measure, word, least, most, parts] of SPOONS) {
    const one = callFunction("GRAMS", name, 1, measure)[0]![0];
    if (typeof one !== "number") return "nur gewogen";
    const count = Math.round((parts * grams) / one) / parts;
    if (count < least || count > most) continue;
    return `ca. ${inQuarters(count)} ${word}`;
  }
  return "nur gewogen";
}

/** Spoons and cups, the scale's grams, per cent, and what the big tin takes. */
function list(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, tin: Spot): MarkedRecipe {
  const heads = putRow(sheet, 4, 0, [
    ...["Was", "Becher und Löffel", "Prozent", "gewogen (g)", "große Dose (g)"],
  ]);
  const cells = lines(sheet, { row: 5, column: 0 }, made, (name, grams, index) => [
    ...[name, measured(made.lines[index]!.de, grams), undefined, grams],
  ]);
  const [names, , , amounts] = cells as [Spot[], Spot[], Spot[], Spot[]];
  const total = under(kit, amounts);
  put(sheet, total.row, 0, "alles");
  const percent = (cell: string) => `=${cell}/${fixed(total)}*100`;
  const plan = { heading: heads[2]!, formula: percent, fixed: [total], format: "0.0" };
  const shares = beside(kit, amounts, plan);
  const formula = (cell: string) => `=${cell}*${fixed(tin)}/100`;
  const more = beside(kit, shares, { heading: heads[4]!, formula, fixed: [tin], format: "0" });
  sumOf(kit, sheet, { row: total.row, column: 2 }, shares, "0.0");
  sumOf(kit, sheet, { row: total.row, column: 4 }, more, "0");
  const alsoAmounts = [...shares, ...more];
  const amountLabel = heads[3]!;
  return markRecipe(kit, made, { names, amounts, alsoAmounts, unit: "g", amountLabel, total });
}

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Zucker insgesamt, % vom Gewicht", states: "sugar share", as: "formula", format: "0.0" },
  { label: "Wasser insgesamt, g", states: "water", as: "typed", decimals: 0 },
  { label: "darin gelöst, g", states: "dissolved", as: "typed", decimals: 0 },
  ...alcoholIn(made, {
    ...{ label: "Alkohol, g", states: "alcohol", as: "typed", decimals: 1 },
  }),
  {
    ...{ label: "Wasser, das bei −18 °C zu Eis wird, in %", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18 },
  },
];

/** What came out, and how cold my freezer was; at the right. */
function outcome(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): void {
  const { random } = kit;
  const out = Math.round(massOf(made) * random.between(0.95, 0.99));
  put(sheet, row, 6, "Herausgekommen");
  putRow(sheet, row + 1, 6, ["in der Dose (g)", out]);
  putRow(sheet, row + 2, 6, ["fest nach (Stunden)", random.whole(4, 8)]);
  putRow(sheet, row + 3, 6, ["Urteil", random.pick(["gut", "sehr gut", "etwas zu hart"])]);
  const [, heading] = putRow(sheet, row + 5, 6, ["Uhrzeit", "Gefrierfach (°C)"]);
  ["18:00", "20:00", "22:00", "7:00"].forEach((hour, index) =>
    put(sheet, row + 6 + index, 6, `${hour} Uhr`),
  );
  temperatures(kit, sheet, { heading: heading!, count: 4 }, [-20, -15]);
}

const OWN = { Zucker: "Haushaltszucker", Filterkaffee: "Kaffee", Walnüsse: "Walnuss" };

/** One page of a keen cook at home. */
function cups(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Löffel und Becher");
  const made = called(kit.make(1)[0]!, OWN);
  put(sheet, 0, 0, `${made.title}, mit Löffel und Becher`);
  const value = 100 * random.whole(11, 18);
  const words = { label: "In die große Dose passen (g)", bare: "In die große Dose passen" };
  const tin = input(kit, sheet, { row: 2, column: 0 }, { ...words, value });
  const recipe = list(kit, sheet, made, tin);
  const next = say(sheet, recipe, { row: 4, column: 6 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 6, label: "So mag ich es" });
  outcome(kit, sheet, made, next + 2);
  const place = { row: recipe.total!.row + 2, column: 0, as: "sentence" } as const;
  const row = tell(kit, sheet, recipe, place);
  note(kit, sheet, row, 0, "Becher: der mit dem blauen Rand, ein Viertelliter.");
  put(sheet, row + 1, 0, "Löffel immer gestrichen voll.");
}

/** Sheets of a man who cooks for pleasure. */
export const hobby: readonly Layout[] = [
  { name: "Hobbykoch, Löffel und Becher", language: "de", build: cups },
  {
    name: "Hobbykoch, Prozent und Ergebnis als Datei",
    language: "de",
    isCsv: true,
    build: attempts,
  },
];
