import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { day, readings } from "./words";

const VOICE: Voice = {
  lead: "Sleeve says: contains",
  honey: "HONEY, not under 12 months.",
  alcohol: "ALCOHOL, not for children, not in pregnancy, not before driving.",
  nuts: "WHOLE NUTS, choking hazard under 5 years.",
  egg: "RAW YOLK, heat to 71 °C or buy pasteurised.",
};

const SAID: readonly Said[] = [
  { label: "Freezing pt", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Depression", inCell: "K", states: "depression", as: "typed", decimals: 1 },
  {
    label: "Water frozen at −18 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    label: "Ice in whole mix at −18 °C",
    ...{ inCell: "%", states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

const MOULDS = [
  ["flat 26", 74],
  ["rocket 24", 82],
  ["mini 40", 45],
] as const;

/** What the moulds take, and how many of each a batch fills. */
function moulds(kit: Kit, sheet: CorpusSheet, row: number, total: Spot): void {
  const [, , heading] = putRow(sheet, row, 7, ["Mould", "one lolly, g", "lollies from batch"]);
  const rows = MOULDS.map(([name, grams], index) => {
    const at = row + 1 + index;
    const count = `=${a1(total).replace(/([A-Z]+)(\d+)/, "$$$1$$$2")}*1000/I${at + 1}`;
    return putRow(sheet, at, 7, [name, grams, shown(count, "0")]);
  });
  kit.marked.formulaColumns.push({
    spots: columnOf(rows, 2),
    heading: heading!,
    fixed: [total],
  });
}

/** The total stands over the list, what is in store at its left. */
function batch(kit: Kit, made: MadeRecipe, name: string): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, `${made.title} lollies`);
  const list = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["in store, kg", "left after, kg", "ingredient", "batch, kg", "lot no."],
      cells: (item, grams) => {
        const store = Math.ceil((grams / 500) * random.between(1.3, 5)) / 2;
        const lot = `L${random.whole(101, 989)}`;
        return [store, undefined, item, shown(inUnit(grams, "kg"), "0.000"), lot];
      },
      ...{ name: 2, amount: 3 },
    },
  );
  const { names, amounts, heads, end } = list;
  beside(kit, heads[1]!, columnOf(list.rows, 0), {
    ...{ sheet, format: "0.000" },
    content: (spot) => `=${a1(spot)}-${a1({ ...spot, column: 3 })}`,
  });
  put(sheet, 2, 2, "batch weighs, kg");
  const total = put(sheet, 2, 3, shown(`=SUM(${span(amounts)})`, "0.000"));
  kit.marked.sums.push({ spot: total, parts: amounts });
  const lines = { names, amounts, total, unit: "kg", amountLabel: heads[3]! } as const;
  const recipe = markRecipe(kit, made, lines);
  const said = [...SAID, ...ofAlcohol(made, "Pure alcohol", "g")];
  const next = say(sheet, recipe, { row: 4, column: 7 }, said);
  nameTarget(sheet, recipe, { row: next, column: 7, label: "Bite" });
  moulds(kit, sheet, 11, total);
  tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
  note(kit, sheet, end + 3, 0, "Water is boiled and cooled the night before, in the blue cans.");
}

/** Two kinds of lolly in kilograms, and the blast freezer's log. */
function lollyMaker(kit: Kit): void {
  const words = { water: "drinking water", sugar: "granulated sugar" };
  const mades = kit.make(2).map((made) => called(upTo(made, 6000), words));
  mades.forEach((made, index) => batch(kit, made, `lolly ${"AB"[index]}`));
  const sheet = addSheet(kit.marked.book, "blast freezer");
  const heads: [string, ...string[]] = ["Date", "air in (°C)", "air after 2 h (°C)"];
  const when = [155, 156, 158, 162, 163, 165].map((ofYear) => day(ofYear, "d mmm"));
  const ranges = [[-33, -28] as const, [-38, -34] as const];
  readings(kit, sheet, { row: 0, column: 0 }, { heads, when, ranges });
}

/** Two people who make lollies. */
export const lollyMakers: readonly Layout[] = [
  { name: "lolly makers, kilos and what stays in store", language: "en", build: lollyMaker },
];
