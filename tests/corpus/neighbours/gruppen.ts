import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { massOf, type MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { beside, lines, under } from "../strangers/zeilen";
import { alcoholIn, temperatures } from "../visitors/lines";

const CHECK = [
  ...["Gruppe", "rührt", "Soll (g)", "auf der Waage (g)", "Unterschied (g)"],
  ...["Gefrierpunkt, gerechnet (°C)", "Wasser gefroren bei −16 °C, gerechnet (%)"],
  ...["Schüssel um 19:30 (°C)", "Gefrierfach um 20:30 (°C)", "gesehen"],
];

interface Block {
  readonly recipe: MarkedRecipe;
  /** The next free row. */
  readonly next: number;
}

/** The recipe of one group: share, grams, name. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, group: string): Block {
  put(sheet, top, 0, `Gruppe ${group}: ${made.title}`);
  const heads = putRow(sheet, top + 1, 0, ["% vom Ganzen", "Gramm", "Zutat"]);
  const place = { row: top + 2, column: 0 };
  const cells = lines(sheet, place, made, (name, grams) => [undefined, grams, name]);
  const [, amounts, names] = cells as [Spot[], Spot[], Spot[]];
  const total = under(kit, amounts);
  put(sheet, total.row, 2, "in der Schüssel");
  const formula = (cell: string) => `=100*${cell}/${fixed(total)}`;
  const plan = { heading: heads[0]!, formula, fixed: [total], format: "0.0" };
  const shares = beside(kit, amounts, plan);
  sumOf(kit, sheet, { row: total.row, column: 0 }, shares, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: shares, unit: "g", amountLabel: heads[1]!, total },
  });
  let next = say(sheet, recipe, { row: total.row + 1, column: 2 }, [
    { label: "gelöst sind (g)", states: "dissolved", as: "typed", decimals: 0 },
    { label: "Zucker im Ganzen (%)", states: "sugar share", as: "formula", format: "0.0" },
    ...alcoholIn(made, { label: "Alkohol (g)", states: "alcohol", as: "typed", decimals: 1 }),
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 2, label: "gewünscht" });
  next = tell(kit, sheet, recipe, { row: next, column: 2, as: "pair" });
  return { recipe, next: next + 1 };
}

/** One group's row on the sheet for checking; gives the cell with the difference. */
function check(kit: Kit, recipe: MarkedRecipe, row: number, heads: readonly Spot[]): Spot {
  const { random, marked } = kit;
  const sheet = marked.book.sheets[0]!;
  const { made, total } = recipe;
  const weighed = Math.round(massOf(made) * random.between(0.985, 1.01));
  const contents = ["ABCD"[row - 4], made.title, `=Rezepte!${a1(total!)}`, weighed];
  const [, , should, is] = putRow(sheet, row, 0, contents) as [Spot, Spot, Spot, Spot];
  const point = { states: "freezing point", as: "typed", decimals: 1 } as const;
  resultAt(sheet, recipe, heads[5]!, { row, column: 5 }, point);
  const ice = { states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 } as const;
  resultAt(sheet, recipe, heads[6]!, { row, column: 6 }, ice);
  put(sheet, row, 9, random.pick(["ja", "ja, zweimal", "ja, nachgewogen"]));
  return put(sheet, row, 4, shown(`=${a1(is)}-${a1(should)}`, "0"));
}

/** What each group weighed and measured, the recipes on the next sheet. */
export function groups(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Kontrollblatt");
  const recipes = addSheet(marked.book, "Rezepte");
  put(sheet, 0, 0, "Kontrollblatt zum dritten Abend");
  put(sheet, 1, 0, "Die Kursleitung zeichnet ab, bevor etwas ins Gefrierfach geht.");
  const heads = putRow(sheet, 3, 0, CHECK);
  let top = 0;
  const rows = kit.make(4).map((made, index) => {
    const { recipe, next } = block(kit, recipes, made, top, "ABCD"[index]!);
    top = next;
    return [check(kit, recipe, 4 + index, heads)];
  });
  marked.formulaColumns.push({ spots: columnOf(rows, 0), heading: heads[4]!, fixed: [] });
  temperatures(kit, sheet, { heading: heads[7]!, count: 4 }, [3, 7]);
  temperatures(kit, sheet, { heading: heads[8]!, count: 4 }, [-18, -14]);
  note(kit, sheet, 9, 0, "Thermometer vor dem Abend im Eiswasser geprüft.");
}
