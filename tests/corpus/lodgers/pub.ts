import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { hasSpirit } from "../guests/words";
import { priceFor } from "../guests/prices";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed, type Listed } from "../newcomers/words";
import { massOf, withLines, type MadeRecipe } from "../recipes";
import { stillMet } from "../kitchens/hand";
import { ALCOHOL, line } from "../stock";
import { prepLists } from "./prep";
import { boozyFirst, given, warnIn, type Cautions } from "./words";

const OWN: Cautions = {
  honey: "Contains honey, not for babies under 12 months.",
  alcohol: "Contains alcohol: over 18s only, not if pregnant or driving.",
  nuts: "Contains whole nuts, choking hazard, not for under 5s.",
  egg: "Raw egg yolk: take the mix to 71 °C or use pasteurised.",
};

/** With a slug of something in it; one with a mistake in it, or a spirit, stays as it is. */
function boozy(kit: Kit, made: MadeRecipe): MadeRecipe {
  if (made.seeded !== undefined || hasSpirit(made)) return made;
  const grams = Math.round(massOf(made) * kit.random.between(0.02, 0.045));
  const [en, de] = kit.random.pick([
    ["gin 40 %", "Gin 40 %"],
    ["vodka 37.5 %", "Wodka 37,5 %"],
    ["rum 40 %", "Rum 40 %"],
  ] as const);
  return stillMet(withLines(made, [...made.lines, line(en, de, grams, ALCOHOL)]));
}

const OPTICS = [
  ["house gin", 40],
  ["sloe gin", 26],
  ["spiced rum", 35],
  ["peach schnapps", 18],
  ["white rum", 37.5],
] as const;

/** What else is behind the bar, and what it would bring. */
function optics(kit: Kit, sheet: CorpusSheet, top: number, { flags }: MarkedRecipe): void {
  const heads = putRow(sheet, top, 0, [
    ...["If we run out, use", "ABV (% vol)", "Put in (g)", "Pure alcohol (g)"],
  ]);
  const rows = OPTICS.map(([name, abv], index) =>
    putRow(sheet, top + 1 + index, 0, [name, abv, 5 * kit.random.whole(5, 12)]),
  );
  const pure = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=RIME.ABVTOMASSFRACTION(${a1({ ...spot, column: 1 })})*${a1(spot)}`,
  });
  rows.forEach(([, abv, grams], index) =>
    kit.marked.alcohols.push({ grams: grams!, abv: abv!, alcohol: pure[index]! }),
  );
  const words = "Whatever the bottle: over 18s only, not if pregnant or driving.";
  flags.push(put(sheet, top + 1 + rows.length, 0, words));
}

/** Costs beside the lines, and the money on a coupe at the right. */
function money(kit: Kit, list: Listed, total: Spot): void {
  const { sheet, heads, amounts, end } = list;
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 2 })}`,
  });
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const portion = given(kit, sheet, [1, 5], ["Portion", "g", kit.random.pick([80, 90, 100])]);
  const price = given(kit, sheet, [2, 5], ["On the menu, VAT in", "£", 3.5, "0.00"]);
  const vat = given(kit, sheet, [3, 5], ["VAT", "%", 20]);
  const row = (at: number, label: string, content: string, format: string): Spot =>
    putRow(sheet, at, 5, [label, shown(content, format)])[1]!;
  const count = row(4, "Portions in a batch", `=${a1(total)}/${a1(portion)}`, "0.0");
  const plate = row(5, "Cost of a portion (£)", `=${a1(cost)}/${a1(count)}`, "0.00");
  const net = row(6, "Price less VAT (£)", `=${a1(price)}/(1+${a1(vat)}/100)`, "0.00");
  row(7, "GP (%)", `=100*(${a1(net)}-${a1(plate)})/${a1(net)}`, "0.0");
}

/** What the chef says of it. */
function talk(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  const cold = { as: "typed", temperatureC: -18 } as const;
  const next = say(sheet, recipe, { row, column: 0 }, [
    { label: "Starts icing up at (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Pure alcohol in the batch (g)", states: "alcohol", as: "typed", decimals: 1 },
    {
      label: "Water in the batch, juice and booze too (g)",
      states: "water",
      as: "formula",
      format: "0",
    },
    { label: "Frozen overnight at −18 °C (% of the water)", states: "ice of water", ...cold },
    { label: "Sugars (% of the batch)", states: "sugar share", as: "typed" },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Should be" });
  return warnIn(sheet, recipe, { row: next + 1, column: 0 }, ["Menu line, contains:", OWN]);
}

/** A sorbet with a shot in it, costed for the specials board. */
function special(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Specials");
  const made = boozy(kit, boozyFirst(kit, 1)[0]!);
  put(sheet, 0, 0, `Specials board: ${made.title}`);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Stuff", "Batch (g)", "£/kg", "£"],
      cells: (name, grams) => [name, grams, shown(priceFor(kit.random, name), "0.00")],
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "Batch");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[1]!, total },
  });
  money(kit, list, total);
  const free = talk(sheet, recipe, Math.max(end + 2, 11));
  optics(kit, sheet, free + 1, recipe);
  note(kit, sheet, free + 9, 0, "Bar to ring through what the kitchen takes.");
}

/** A pub kitchen. */
export const pubs: readonly Layout[] = [
  { name: "pub kitchen, sorbet with a shot and its GP", language: "en", build: special },
  ...prepLists,
];
