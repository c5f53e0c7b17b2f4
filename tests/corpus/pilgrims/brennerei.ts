import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, stillMet } from "../kitchens/hand";
import { freezesAt, markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { massOf, withLines, type MadeRecipe } from "../recipes";
import { ALCOHOL, line } from "../stock";
import { isAlcoholic } from "../strollers/words";
import { readings, warnAt } from "./words";

/** With something of one's own still; one with a spirit, or with a mistake, stays as it is. */
function distilled(kit: Kit, made: MadeRecipe): MadeRecipe {
  if (made.seeded !== undefined || isAlcoholic(made)) return made;
  const grams = Math.round(massOf(made) * kit.random.between(0.02, 0.04));
  const name = kit.random.pick(["Kirschwasser 40 %", "Obstler 40 % vol"]);
  return stillMet(withLines(made, [...made.lines, line("vodka 40 %", name, grams, ALCOHOL)]));
}

const CELLAR = [
  ["Quittenbrand", 43],
  ["Haselnussgeist", 40],
  ["Holunderlikör", 22],
  ["Apfelbrand aus dem Fass", 41],
  ["Schlehenlikör", 28],
] as const;

/** The own bottles, what a dash of them brings. */
function cellar(kit: Kit, sheet: CorpusSheet, { flags }: MarkedRecipe): void {
  put(sheet, 0, 8, "Aus unserem Keller");
  const heads = putRow(sheet, 1, 8, [
    ...["Sorte", "Spritzer (g)", "Alkohol (% vol)", "davon Alkohol (g)"],
  ]);
  const rows = CELLAR.map(([name, percent], index) =>
    putRow(sheet, 2 + index, 8, [name, kit.random.whole(5, 18), percent]),
  );
  const pure = beside(kit, heads[3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=${a1(spot)}*RIME.ABVTOMASSFRACTION(${a1({ ...spot, column: 10 })})`,
  });
  rows.forEach(([, grams, abv], index) =>
    kit.marked.alcohols.push({ grams: grams!, abv: abv!, alcohol: pure[index]! }),
  );
  const words = "Alles aus dem Keller ist Alkohol: nicht für Kinder, Schwangere und Fahrer.";
  flags.push(put(sheet, 7, 8, words));
}

/** What the house wants, and whether it has it. */
function wanted(sheet: CorpusSheet, { made, results }: MarkedRecipe, top: number): void {
  putRow(sheet, top, 0, ["Unser Ziel", "von", "bis", "haben wir", "passt?"]);
  const point = results.find(({ states }) => states === "freezing point");
  if (point === undefined) return;
  const middle = Math.round(freezesAt(made.names, made.grams));
  const row = top + 1;
  const cells = ["Gefrierpunkt (°C)", middle - 1, middle + 1, shown(`=${a1(point.spot)}`, "0.0")];
  const [, from, to, now] = putRow(sheet, row, 0, cells).map(a1);
  put(sheet, row, 4, `=IF(${now}<${from},"zu tief",IF(${now}>${to},"zu hoch","ja"))`);
}

/** The trial and the tub for the tasting room. */
function listOf(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, tub: Spot): MarkedRecipe {
  const list = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["Nr.", "Hinein kommt", "Versuch, Gramm", "Wanne, Gramm"],
      cells: (name, grams, index) => [index + 1, name, grams],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  put(sheet, end, 1, "Masse");
  const alsoAmounts = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0", fixed: [tub, total] },
    content: (spot) => `=${fixed(tub)}*${a1(spot)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end, column: 3 }, alsoAmounts, "0");
  const lines = { names, amounts, alsoAmounts, unit: "g", total } as const;
  return markRecipe(kit, made, { ...lines, amountLabel: heads[2]! });
}

/** The tasting room's freezer, read when somebody goes in. */
function room(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 9, 8, ["Verkostung", "Gäste", "Gefrierschrank (°C)"]);
  const rows = ["Märzrunde", "Blütenfest", "Hoffest", "Weinlese"].map((word, index) =>
    putRow(sheet, 10 + index, 8, [
      ...[word, kit.random.whole(6, 28), shown(-kit.random.whole(33, 41) / 2, "0.0")],
    ]),
  );
  readings(kit, heads[2]!, rows, 2);
}

/** A distiller's sorbet: the tub, what it is like, the own target, the bottles. */
function distillery(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Verkostung");
  const made = distilled(kit, kit.make(1)[0]!);
  put(sheet, 0, 0, `${made.title} für die Verkostung`);
  const place = (row: number) => ({ row, column: 0 });
  const words = { label: "Wanne fasst (g)", bare: "Wanne fasst" };
  const tub = input(kit, sheet, place(2), { ...words, value: kit.random.pick([1800, 2500, 4000]) });
  const temperatureC = kit.random.pick([-14, -16, -18]);
  const cold = { label: "Gefrierschrank (°C)", bare: "Gefrierschrank", value: temperatureC };
  const temperature = input(kit, sheet, place(3), cold);
  const recipe = listOf(kit, sheet, made, tub);
  const frozen = { as: "formula", temperatureC, temperature, format: "0" } as const;
  const next = say(sheet, recipe, { row: recipe.total!.row + 2, column: 1 }, [
    { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula", format: "0.0" },
    { label: "Wasser aus allem (g)", states: "water", as: "formula", format: "0" },
    { label: "Alkohol, rein (g)", states: "alcohol", as: "formula", format: "0.0" },
    { label: "Davon im Gefrierschrank gefroren, % des Wassers", states: "ice of water", ...frozen },
    { label: "Eis im Gefrierschrank, % der Gesamtmasse", states: "ice of mix", ...frozen },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "gereicht als" });
  const after = warnAt(sheet, recipe, { row: next + 1, column: 1 }, "Auf die Karte: enthält");
  wanted(sheet, recipe, after + 1);
  cellar(kit, sheet, recipe);
  room(kit, sheet);
  note(kit, sheet, after + 4, 0, "Vorlauf niemals in die Küche geben.");
}

/** A distiller with a tasting room. */
export const brennereien: readonly Layout[] = [
  { name: "Brennerei, Sorbet mit eigenem Ziel", language: "de", build: distillery },
];
