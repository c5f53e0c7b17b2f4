import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { upTo } from "../strollers/words";
import { inUnit } from "../list";
import { alcoholIn, asked, chosen, hasAlcohol, readings, warnAt } from "./words";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";

const DAYS = ["Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag"];

/** What stands under the list of a day. */
const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "davon gelöst (g)", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Zucker in der Masse (%)", states: "sugar share", as: "typed" },
  ...alcoholIn(made, "Alkohol rein (g)"),
];

interface Day {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
}

/** A day's dessert on its own sheet, in kilograms. */
function dessert(kit: Kit, made: MadeRecipe, day: string): Day {
  const sheet = addSheet(kit.marked.book, day);
  put(sheet, 0, 0, `${day}: ${made.title}`);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Zutat", "Einheit", "Menge (kg)", "Kürzel"],
      cells: (item, grams) => [
        ...[item, "kg", shown(inUnit(grams, "kg"), "0.000")],
        kit.random.pick(["ML", "TS", undefined]),
      ],
      ...{ name: 0, amount: 2 },
    },
  );
  putRow(sheet, end, 0, ["Kessel", "kg"]);
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  const unitCells = columnOf(rows, 1);
  const lines = { names, amounts, unitCells, unit: "kg", amountLabel: heads[2]!, total } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, answers(made));
  warnAt(sheet, recipe, { row: next + 1, column: 0 }, "Am Buffet auszeichnen:");
  return { recipe, total };
}

const HEADS = [
  ...["Tag", "Nachtisch", "Kessel (kg)", "Portionen", "friert ab (°C)", "Wasser gesamt (g)"],
  ...["Wasser gefroren bei −16 °C (%)", "Truhe früh (°C)", "gedacht als"],
];

const PLANS: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula", format: "0.0" },
  { states: "water", as: "typed", decimals: 0 },
  { states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
];

/** A day's line of the first page. */
function line(
  kit: Kit,
  sheet: CorpusSheet,
  day: Day,
  row: number,
  heads: readonly Spot[],
  bowl: Spot,
) {
  const { recipe, total } = day;
  const tab = total.sheet;
  const [, , kilos] = putRow(sheet, row, 0, [
    ...[tab, recipe.made.title, shown(`=${tab}!${a1(total)}`, "0.000")],
  ]) as [Spot, Spot, Spot];
  const portions = put(sheet, row, 3, shown(`=${a1(kilos)}*1000/${fixed(bowl)}`, "0"));
  const cells = `${tab}!${span(recipe.names)},${tab}!${span(recipe.amounts)}`;
  PLANS.forEach((plan, index) => {
    const column = 4 + index;
    resultAt(sheet, recipe, heads[column]!, { row, column }, plan, () => cells);
  });
  const { target } = recipe.made;
  if (target !== null) recipe.targets.push(put(sheet, row, 8, target));
  const chest = put(sheet, row, 7, shown(-kit.random.whole(30, 41) / 2, "0.0"));
  return [kilos, portions, chest];
}

/** Five days on a page, each read from its sheet. */
function herberge(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Woche");
  put(sheet, 0, 0, "Jugendherberge, Nachtische der Ferienwoche");
  const bowl = asked(kit, sheet, [1, 0], ["Portion", "g", random.pick([70, 80, 90])]);
  const heads = putRow(sheet, 3, 0, HEADS);
  const mades = chosen(kit, DAYS.length, (made) => !hasAlcohol(made)).map((made) =>
    called(upTo(made, 6000), { Zucker: "Kristallzucker" }),
  );
  const days = mades.map((made, index) => dessert(kit, made, DAYS[index]!));
  const rows = days.map((day, index) => line(kit, sheet, day, 4 + index, heads, bowl));
  const end = 4 + days.length;
  put(sheet, end, 1, "ganze Woche");
  sumOf(kit, sheet, { row: end, column: 2 }, columnOf(rows, 0), "0.000");
  sumOf(kit, sheet, { row: end, column: 3 }, columnOf(rows, 1), "0");
  const portions = columnOf(rows, 1);
  marked.formulaColumns.push({ spots: portions, heading: heads[3]!, fixed: [bowl] });
  readings(kit, heads[7]!, columnOf(rows, 2));
  note(kit, sheet, end + 2, 0, "Bei Gruppen über 80 Personen zwei Kessel ansetzen.");
}

/** A youth hostel. */
export const herbergen: readonly Layout[] = [
  { name: "Jugendherberge, Ferienwoche auf einer Seite", language: "de", build: herberge },
];
