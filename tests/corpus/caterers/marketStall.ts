import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { boozyFirst } from "../lodgers/words";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import { ofAlcohol, readings } from "../pilgrims/words";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { tellIn, type Voice } from "./words";

const VOICE: Voice = {
  lead: "On the sign: contains",
  honey: "Contains honey, not suitable for babies under 12 months.",
  alcohol: "Contains alcohol, over 18s only; not in pregnancy, not before driving.",
  nuts: "Contains whole nuts, a choking hazard for under 5s.",
  egg: "Contains raw egg yolk: heat to 71 °C or use the pasteurised one.",
};

const REMARKS = ["from the farm", "sieve first", "new sack", "weigh last", "ask for ripe ones"];

const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "Freezing starts", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  {
    ...{ label: "Water that has frozen at −16 °C", inCell: "% of the water" },
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
  { label: "Dissolved in the water", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Freezing point lowered by", inCell: "K", states: "depression", as: "formula" },
  ...ofAlcohol(made, { label: "Pure alcohol in the tub", inCell: "g" }),
];

/** One mix: its list in kilos, what is known of it at the right; gives the row for the next. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  const { random } = kit;
  put(sheet, top, 0, made.title);
  const plan = {
    heads: ["Into the bucket", "Weight", "", "Remarks"],
    cells: (name: string, grams: number) => [
      ...[name, shown(inUnit(grams, "kg"), "0.000"), "kg"],
      random.next() < 0.35 ? random.pick(REMARKS) : undefined,
    ],
  };
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    plan,
  );
  put(sheet, end, 0, "One tub");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  put(sheet, end, 2, "kg");
  const unitCells = columnOf(rows, 2);
  const cells = { names, amounts, unitCells, unit: "kg", amountLabel: heads[1]!, total } as const;
  const recipe: MarkedRecipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: top + 2, column: 5 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Sold as" });
  return Math.max(tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE), next + 1) + 1;
}

const SPIRITS = [
  ["gin, big bottle", 40],
  ["plum brandy", 45],
  ["apple brandy", 42],
  ["plain vodka", 37.5],
] as const;

/** What alcohol a measure of each bottle brings. */
function bottles({ marked, random }: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Bottles we put into sorbets, and what one tub gets of them");
  const heads = putRow(sheet, 2, 0, ["Bottle", "ABV (%)", "Goes in (g)", "Alcohol from it (g)"]);
  const rows = SPIRITS.map(([bottle, strength], index) => {
    const row = 3 + index;
    const [, abv, grams] = putRow(sheet, row, 0, [bottle, strength, 5 * random.whole(8, 24)]);
    const formula = `=${a1(grams!)}*RIME.ABVTOMASSFRACTION(${a1(abv!)})`;
    const alcohol = put(sheet, row, 3, shown(formula, "0.0"));
    marked.alcohols.push({ grams: grams!, abv: abv!, alcohol });
    return alcohol;
  });
  marked.formulaColumns.push({ spots: rows, heading: heads[3]!, fixed: [] });
  const words = "All of these have alcohol: adults only, not in pregnancy, not before driving.";
  marked.recipes[0]!.flags.push(put(sheet, 8, 0, words));
}

const DAYS = ["Friday", "Saturday", "Sunday", "bank holiday"];

/** How cold the chest was on the days of the market. */
function chest(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const cold = (): ReturnType<typeof shown> => shown(-random.whole(26, 41) / 2, "0.0");
  const heads = putRow(sheet, 0, 0, [
    "Day",
    "Chest, morning (°C)",
    "Chest, evening (°C)",
    "Tubs sold",
  ]);
  const rows: Spot[][] = DAYS.map((day, index) =>
    putRow(sheet, 1 + index, 0, [day, cold(), cold(), random.whole(3, 14)]),
  );
  readings(kit, heads[1]!, rows, 1);
  readings(kit, heads[2]!, rows, 2);
  put(sheet, 5, 0, "Weekend");
  sumOf(kit, sheet, { row: 5, column: 3 }, columnOf(rows, 3), "0");
}

/** Four mixes under one another, the bottles and the chest on sheets of their own. */
function marketStall(kit: Kit): void {
  const { book } = kit.marked;
  const sheet = addSheet(book, "Mixes");
  put(sheet, 0, 0, "Market stall, the four mixes of the season");
  let top = 2;
  for (const made of boozyFirst(kit, 4)) top = mix(kit, sheet, upTo(made, 3000), top);
  note(kit, sheet, top, 0, "Scale by the door weighs to 1 g, the other one does not.");
  bottles(kit, addSheet(book, "Bottles"));
  chest(kit, addSheet(book, "Chest"));
}

/** A stall on a market. */
export const marketStalls: readonly Layout[] = [
  {
    name: "market stall, four mixes under one another in kilos",
    language: "en",
    build: marketStall,
  },
];
