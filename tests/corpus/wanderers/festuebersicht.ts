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
import { nameTarget, type Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { resultAt, type ResultPlan } from "../results";
import { temperatures } from "../strollers/words";
import { heed } from "./worte";

/** The bowls, as the first sheet has them. */
export interface Amounts {
  readonly sheet: CorpusSheet;
  readonly items: readonly Spot[];
  readonly times: readonly Spot[];
  readonly recipes: readonly MarkedRecipe[];
}

const HEADS = [
  ...["Sorte", "Schüsseln", "Portionen", "Gefrierpunkt (°C)", "Wasser je Schüssel (g)"],
  ...["gefroren bei −18 °C (% des Wassers)", "Eis bei −18 °C (% vom Gewicht)"],
  ...["Truhe abgelesen (°C)", "gedacht als", "Tafel"],
];

const COLD = { as: "typed", temperatureC: -18, decimals: 0 } as const;

/** What is said of a kind, from the fourth column on. */
const SAID: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula", format: "0.0" },
  { states: "water", as: "typed", decimals: 0 },
  { states: "ice of water", ...COLD },
  { states: "ice of mix", ...COLD },
];

interface Overview {
  readonly sheet: CorpusSheet;
  readonly heads: readonly Spot[];
  readonly portion: Spot;
}

/** A kind's line; gives the cells of its bowls, portions and reading. */
function line(kit: Kit, recipe: MarkedRecipe, row: number, amounts: Amounts, view: Overview) {
  const { sheet, heads, portion } = view;
  const { column } = recipe.amounts[0]!;
  const times = putRow(sheet, row, 0, [
    ...[recipe.made.title, `=Mengen!${a1({ ...amounts.times[0]!, column })}`],
  ])[1]!;
  const eaters = `=${a1(times)}*Mengen!${a1(recipe.total!)}/${fixed(portion)}`;
  const portions = put(sheet, row, 2, shown(eaters, "0"));
  const all = amounts.items.map((item) => ({ ...item, column }));
  const lines = () => `Mengen!${absolute(span(amounts.items))},Mengen!${span(all)}`;
  SAID.forEach((plan, index) =>
    resultAt(sheet, recipe, heads[3 + index]!, { row, column: 3 + index }, plan, lines),
  );
  const read = put(sheet, row, 7, shown(-kit.random.whole(165, 212) / 10, "0.0"));
  nameTarget(sheet, recipe, { row, column: 8 });
  const told = heed(recipe.made, "Enthält");
  if (told !== "") recipe.flags.push(put(sheet, row, 9, told));
  return [times, portions, read];
}

/** All kinds in one view, and what a portion costs. */
export function overview(kit: Kit, amounts: Amounts, cost: Spot): void {
  const sheet = addSheet(kit.marked.book, "Übersicht");
  const words = { label: "Portion (g)", bare: "Portion", value: kit.random.pick([70, 80, 100]) };
  const portion = input(kit, sheet, { row: 0, column: 0 }, words);
  const heads = putRow(sheet, 2, 0, HEADS);
  const view = { sheet, heads, portion };
  const rows = amounts.recipes.map((each, at) => line(kit, each, 3 + at, amounts, view));
  const [times, portions, reads] = [0, 1, 2].map((at) => columnOf(rows, at)) as [
    ...[Spot[], Spot[], Spot[]],
  ];
  [times, portions].forEach((spots, at) =>
    kit.marked.formulaColumns.push({
      ...{ spots, heading: heads[1 + at]!, fixed: at === 0 ? [] : [portion] },
    }),
  );
  temperatures(kit, heads[7]!, reads);
  const row = 3 + rows.length;
  put(sheet, row, 0, "Fest gesamt");
  sumOf(kit, sheet, { row, column: 1 }, times);
  const count = sumOf(kit, sheet, { row, column: 2 }, portions, "0");
  const single = `=Einkauf!${a1(cost)}/${fixed(count)}`;
  putRow(sheet, row + 2, 0, ["Zutaten für eine Portion (€)", shown(single, "0.00")]);
}
