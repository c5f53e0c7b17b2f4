import { a1, addSheet, over, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { massOf, withLines, type MadeRecipe } from "../recipes";
import { ALCOHOL, line, type StockLine } from "../stock";
import { hasAlcohol } from "../strangers/etikett";
import { lines, under } from "../strangers/zeilen";
import { alcoholIn } from "../visitors/lines";
import { plates } from "./teller";

const SHOTS: readonly StockLine[] = [
  line("vodka 40 %", "Wodka 40 %", 0, ALCOHOL),
  line("rum 40 %", "Rum 40 %", 0, ALCOHOL),
  line("liqueur 25 %", "Likör 25 %", 0, ALCOHOL),
];

/** The same recipe with a shot in it, where it has none and no mistake was put into it. */
function withShot({ random }: Kit, made: MadeRecipe): MadeRecipe {
  if (hasAlcohol(made) || made.seeded !== undefined) return made;
  const grams = Math.round(massOf(made) * random.between(0.025, 0.045));
  return stillMet(withLines(made, [...made.lines, { ...random.pick(SHOTS), grams }]));
}

/** Per cent by volume of a drink; nothing for what is none. */
function strengthOf({ lines: list }: MadeRecipe, index: number): number | undefined {
  const { de, caution } = list[index]!;
  const strength = /([\d,]+) %/.exec(de)?.[1];
  return caution === ALCOHOL.caution ? Number(strength!.replace(",", ".")) : undefined;
}

/** The alcohol beside each drink of a sorbet, and all of it. */
function pure(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, cells: readonly Spot[][]): void {
  const [abvs, grams] = [cells[1]!, cells[2]!];
  const spots = grams.flatMap((amount, index) => {
    if (strengthOf(made, index) === undefined) return [];
    const abv = abvs[index]!;
    const content = `=RIME.ABVTOMASSFRACTION(${a1(abv)})*${a1(amount)}`;
    const alcohol = put(sheet, amount.row, 4, shown(content, "0.0"));
    kit.marked.alcohols.push({ grams: amount, abv, alcohol });
    return [alcohol];
  });
  if (spots.length === 0) return;
  const all = grams.map(({ sheet: name, row }) => ({ sheet: name, row, column: 4 }));
  sumOf(kit, sheet, { row: grams.at(-1)!.row + 1, column: 4 }, all, "0.0");
}

const said = (made: MadeRecipe): Said[] => [
  { label: "fängt an zu gefrieren (°C)", states: "freezing point", as: "typed", decimals: 1 },
  ...alcoholIn(made, {
    ...{ label: "Alkohol in der Menge (g)", states: "alcohol", as: "typed", decimals: 1 },
  }),
  { label: "Wasser in der Menge (g)", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "Wasser gefroren bei −18 °C (%)", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18 },
  },
];

/** One sorbet of the list, its name at the left over all its lines; gives the next free row. */
function sorbet(kit: Kit, made: MadeRecipe, top: number, heads: readonly Spot[]): number {
  const sheet = kit.marked.book.sheets[0]!;
  const cells = lines(sheet, { row: top, column: 1 }, made, (name, grams, index) => [
    ...[name, strengthOf(made, index), grams],
  ]);
  const [names, , amounts] = cells as [Spot[], Spot[], Spot[]];
  const title = put(sheet, top, 0, made.title);
  sheet.merged.push(over([title, { ...title, row: top + names.length - 1 }]));
  const total = under(kit, amounts);
  put(sheet, total.row, 1, "Summe");
  pure(kit, sheet, made, cells);
  const recipe: MarkedRecipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[3]!, total },
  });
  const next = say(sheet, recipe, { row: top, column: 6 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Standfest als" });
  const below = Math.max(total.row, next) + 1;
  return tell(kit, sheet, recipe, { row: below, column: 1, as: "sentence" }) + 1;
}

const SYRUPS = ["dünn, für Granité", "1 : 1", "dick", "zum Glasieren", "unser Ansatz"];

/** The syrups in the cold store. */
function syrups(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Läuterzucker");
  const heads = putRow(sheet, 1, 0, [
    ...["Läuterzucker", "Wasser (g)", "Zucker (g)", "Zucker im Sirup (%)"],
    "Zucker je 100 g Wasser (g)",
  ]);
  const rows = SYRUPS.map((name, index) => {
    const sweet = [400, 1000, 1300, 1600, 20 * random.whole(30, 60)][index]!;
    const [, water, sugar] = putRow(sheet, 2 + index, 0, [name, 1000, sweet]);
    const whole = `(${a1(sugar!)}+${a1(water!)})`;
    const share = put(sheet, 2 + index, 3, shown(`=${a1(sugar!)}/${whole}*100`, "0.0"));
    const content = `=${a1(sugar!)}/${a1(water!)}*100`;
    const perWater = put(sheet, 2 + index, 4, shown(content, "0.0"));
    marked.strengths.push({ sugar: sugar!, water: water!, share, perWater });
    return [share, perWater];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

/** Three with a shot in them, one below the other in one list. */
function sorbets(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Karte Sommer");
  put(sheet, 0, 0, "Sorbets und Eis mit Schuss, für ein Blech");
  const heads = putRow(sheet, 2, 0, [
    ...["Was", "Zutat", "vol.-%", "Menge (g)", "davon Alkohol (g)"],
  ]);
  let top = 3;
  for (const made of kit.make(3)) top = sorbet(kit, withShot(kit, made), top, heads);
  note(kit, sheet, top, 0, "Alkohol immer zuletzt und kalt einrühren.");
  syrups(kit);
}

/** Sheets of a restaurant's cook. */
export const koch: readonly Layout[] = [
  { name: "Restaurant, Sorbets mit Schuss", language: "de", build: sorbets },
  { name: "Restaurant, Dessertteller", language: "de", build: plates },
];
