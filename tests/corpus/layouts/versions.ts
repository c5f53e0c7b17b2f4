import { addSheet, put, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import type { MadeRecipe } from "../recipes";
import type { ResultPlan } from "../results";
import { again, answer, formulas, kilos, markRecipe, namesOf, sumAt, tellAll } from "./marking";

/** The unit in the number format. */
const GRAMS = '0" g"';

type Answers = readonly (readonly [string, ResultPlan])[];

const freezing = { states: "freezing point", as: "typed" } as const;

const VERSIONS: Answers = [
  ["Gefrierpunkt (°C)", freezing],
  ["Gefrierpunktserniedrigung (K)", { states: "depression", as: "typed" }],
  ["Eis in der Masse bei −18 °C (%)", { states: "ice of mix", as: "typed", temperatureC: -18 }],
  ["Zucker (g je 100 g Wasser)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["Zucker (Massen-% der Mischung)", { states: "sugar share", as: "typed" }],
];

interface Version {
  readonly sheet: CorpusSheet;
  readonly heads: readonly Spot[];
  readonly column: number;
  readonly heading: string;
  readonly answersAt: number;
  readonly words: number;
}

/** One version in a column beside the names that it shares. */
function version(kit: Kit, made: MadeRecipe, plan: Version) {
  const { sheet, heads, column, answersAt, words } = plan;
  const amountLabel = put(sheet, heads[0]!.row - 1, column, plan.heading);
  const all = heads.map(({ row }) => ({ sheet: sheet.name, row, column }));
  const at = made.names.map((name) =>
    heads.findIndex(({ row }) => sheet.cells[row]![words]!.content === name),
  );
  const amounts = at.map((index, line) =>
    put(sheet, all[index]!.row, column, shown(made.grams[line]!, GRAMS)),
  );
  const total = sumAt(kit, sheet, [heads.at(-1)!.row + 1, column], all, GRAMS);
  const names = at.map((index) => heads[index]!);
  const recipe = markRecipe(kit, made, { names, amounts, shared: true, total, amountLabel });
  VERSIONS.forEach(([label, answered], index) => {
    const row = answersAt + index;
    answer(sheet, recipe, [label, row, words], [row, column], answered);
  });
  return recipe;
}

/** The recipe as it was and as it is, the names between, the change at the end. */
function beforeAndAfter(kit: Kit): void {
  const [made] = kit.make(1);
  const mades = [kilos(again(kit, made!)), kilos(made!)];
  const sheet = addSheet(kit.marked.book, "Überarbeitung");
  put(sheet, 0, 0, `${made!.title}, vorher und nachher`);
  const heads = namesOf(mades).map((name, index) => put(sheet, 3 + index, 1, name));
  const end = 3 + heads.length;
  put(sheet, 2, 1, "Zutat");
  put(sheet, end, 1, "Summe");
  const plan = { sheet, heads, answersAt: end + 2, words: 1 };
  const recipes = mades.map((each, index) =>
    version(kit, each, {
      ...plan,
      column: index * 2,
      heading: ["vorher", "nachher"][index]!,
    }),
  );
  const heading = put(sheet, 2, 3, "Änderung");
  const changes = heads.map(({ row }) => shown(`=C${row + 1}-A${row + 1}`, GRAMS));
  formulas(kit, heading, changes, { sheet, at: [3, 3] });
  put(sheet, end + 8, 1, "Ziel");
  recipes.forEach((recipe, index) =>
    nameTarget(sheet, recipe, { row: end + 8, column: index * 2 }),
  );
  tellAll(sheet, recipes, [end + 10, 0]);
  note(kit, sheet, end + 12, 0, "Nachher gilt ab August.");
}

/** Versions of one recipe that share their names. */
export const versions: readonly Layout[] = [
  { name: "vorher und nachher", language: "de", build: beforeAndAfter },
];
