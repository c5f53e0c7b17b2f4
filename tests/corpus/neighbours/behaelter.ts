import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { hasAlcohol } from "../strangers/etikett";
import { batchOf } from "../strangers/mengen";
import { eurosPerKg } from "../strangers/preise";
import { beside, lines, under } from "../strangers/zeilen";

/** What the owner fills in once for a kind. */
const GIVEN = [
  ["Ein voller Behälter wiegt netto (kg)", "Ein voller Behälter wiegt netto", [2.8, 3.2, 3.6]],
  ["Bleibt in der Maschine (kg)", "Bleibt in der Maschine", [0.15, 0.2, 0.3]],
  ["Eine Portion (g)", "Eine Portion", [65, 75, 80]],
  ["Becher und Löffel (€)", "Becher und Löffel", [0.07, 0.09]],
  ["Kundin zahlt, mit Steuer (€)", "Kundin zahlt, mit Steuer", [1.6, 1.8, 2]],
  ["Mehrwertsteuer (%)", "Mehrwertsteuer", [7]],
] as const;

/** What a pack holds and costs. */
function packOf({ random }: Kit, name: string): [number, number] {
  const size = name === "Wasser" ? 1000 : random.pick([1, 2.5, 5, 10]);
  return [size, Math.round(100 * size * eurosPerKg(random, name)) / 100];
}

/** Packs and prices beside the kilograms of a batch; gives what the batch costs, too. */
function bought(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number) {
  const heads = putRow(sheet, top, 0, [
    ...["Pos.", "Zutat", "Gebinde (kg)", "Gebinde kostet (€)", "für einen Ansatz (kg)"],
    ...["kostet im Ansatz (€)", "% der Kosten"],
  ]);
  const place = { row: top + 1, column: 0 };
  const cells = lines(sheet, place, made, (name, grams, index) => {
    const [size, price] = packOf(kit, made.lines[index]!.de);
    return [index + 1, name, size, shown(price, "0.00"), shown(inUnit(grams, "kg"), "0.000")];
  });
  const [, names, , , amounts] = cells as [Spot[], Spot[], Spot[], Spot[], Spot[]];
  const price = (cell: string) => `=${cell}*${cell.replace("E", "D")}/${cell.replace("E", "C")}`;
  const costs = beside(kit, amounts, { heading: heads[5]!, formula: price, format: "0.00" });
  const [total, cost] = [under(kit, amounts, "0.000"), under(kit, costs, "0.00")];
  put(sheet, total.row, 1, "Summe");
  const formula = (cell: string) => `=${cell}/${fixed(cost)}*100`;
  const plan = { heading: heads[6]!, formula, fixed: [cost], format: "0.0" };
  const parts = beside(kit, costs, plan);
  sumOf(kit, sheet, { row: total.row, column: 6 }, parts, "0.0");
  const amountLabel = heads[4]!;
  const recipe = markRecipe(kit, made, { names, amounts, unit: "kg", amountLabel, total });
  return { recipe, cost };
}

/** Containers out of a batch, and what is left of the price of a portion. */
function perContainer(kit: Kit, total: Spot, cost: Spot, given: readonly Spot[]): number {
  const sheet = kit.marked.book.sheets[0]!;
  const [full, left, portion, cone, price, tax] = given.map(a1) as [string, string, ...string[]];
  const row = total.row + 2;
  const answer = (step: number, label: string, formula: string, format: string): string => {
    put(sheet, row + step, 1, label);
    return a1(put(sheet, row + step, 5, shown(formula, format)));
  };
  const mass = `(${a1(total)}-${left})`;
  answer(0, "Behälter aus einem Ansatz", `=${mass}/${full}`, "0.0");
  const each = answer(1, "Zutaten je Behälter (€)", `=${a1(cost)}/${mass}*${full}`, "0.00");
  const goods = `=${each}/${full}*${portion!}/1000+${cone!}`;
  const spent = answer(2, "Zutaten und Becher je Portion (€)", goods, "0.00");
  const net = answer(3, "Erlös je Portion ohne Steuer (€)", `=${price!}/(1+${tax!}/100)`, "0.00");
  answer(4, "bleibt für Miete, Strom und Lohn (€)", `=${net}-${spent}`, "0.00");
  return row + 6;
}

const ALCOHOL_IN_IT: Said = {
  ...{ label: "reiner Alkohol, g je Ansatz", states: "alcohol", as: "typed", decimals: 0 },
};

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierpunkt, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Gesamtwasser, g je Ansatz", states: "water", as: "typed", decimals: 0 },
  ...(hasAlcohol(made) ? [ALCOHOL_IN_IT] : []),
  { label: "Zucker, % der Masse", states: "sugar share", as: "typed" },
  {
    ...{ label: "Wasser ausgefroren bei −12 °C (Theke), %", states: "ice of water" },
    ...{ as: "typed", temperatureC: -12 },
  },
  {
    ...{ label: "Eis in der Masse bei −20 °C (Lager), %", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -20 },
  },
];

function answers(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, next: number): void {
  const told = say(sheet, recipe, { row: 2, column: 8 }, said(recipe.made));
  nameTarget(sheet, recipe, { row: told, column: 8, label: "So kommt es in die Theke" });
  const row = tell(kit, sheet, recipe, { row: next, column: 1, as: "pair" });
  note(kit, sheet, row + 1, 1, "Gebindepreise vom letzten Lieferschein.");
}

/** What a container and a portion cost, from the packs that are bought. */
export function containers(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Kalkulation");
  const batch = batchOf(kit.make(1)[0]!, random.whole(9, 16));
  const made = called(batch, { Zucker: "Raffinade", Heidelbeeren: "Blaubeeren" });
  put(sheet, 0, 0, `Kalkulation ${made.title}`);
  const given = GIVEN.map(([label, bare, values], index) =>
    input(kit, sheet, { row: 2 + index, column: 1 }, { label, bare, value: random.pick(values) }),
  );
  const { recipe, cost } = bought(kit, sheet, made, 3 + GIVEN.length);
  const next = perContainer(kit, recipe.total!, cost, given);
  answers(kit, sheet, recipe, next);
}
