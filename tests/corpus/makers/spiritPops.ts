import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { boozyFirst, given } from "../lodgers/words";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, ofAlcohol, upTo } from "../strollers/words";
import { log, OURS } from "./words";

const SAID: readonly Said[] = [
  { label: "Mix freezes from", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Lowered by", inCell: "K", states: "depression", as: "formula" },
  {
    label: "Water, with what is in the fruit",
    inCell: "g",
    states: "water",
    as: "formula",
    format: "0",
  },
  {
    ...{ label: "Water frozen at −18 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The strength that a bottle's name gives. */
const strengthIn = (name: string): number | undefined => {
  const found = /([\d.]+) ?%/.exec(name)?.[1];
  return found === undefined ? undefined : Number(found);
};

/** The drinks of a list: their strength, and the alcohol worked out beside it. */
function poured(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, amounts: readonly Spot[]): void {
  amounts.forEach((grams, index) => {
    const strength = strengthIn(made.names[index]!);
    const isDrink = isAlcoholic({ ...made, lines: [made.lines[index]!] });
    if (!isDrink || strength === undefined) return;
    const abv = put(sheet, grams.row, 3, strength);
    const formula = `=RIME.ABVTOMASSFRACTION(${a1(abv)})*${a1(grams)}`;
    const alcohol = put(sheet, grams.row, 4, shown(formula, "0.0"));
    kit.marked.alcohols.push({ grams, abv, alcohol });
  });
}

/** A flavour's list with the number of moulds it fills; gives the row for the next. */
function flavour(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, mould: Spot): number {
  put(sheet, row, 0, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["Goes in", "grams", "sieved?", "% vol", "alcohol, g"],
      cells: (name, grams) => [
        name,
        grams,
        /berries|peach|mango|cherries/.test(name) ? "yes" : undefined,
      ],
    },
  );
  poured(kit, sheet, made, amounts);
  put(sheet, end, 0, "Jug");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  putRow(sheet, end + 1, 0, ["Moulds it fills", shown(`=${a1(total)}/${fixed(mould)}`, "0.0")]);
  const cells = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe: MarkedRecipe = markRecipe(kit, made, cells);
  const said = [...SAID, ...ofAlcohol(made, "Alcohol in the jug", "g")];
  const next = say(sheet, recipe, { row: row + 1, column: 6 }, said);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Bite" });
  const last = tellIn(sheet, recipe, { row: next + 1, column: 6 }, OURS);
  return Math.max(end + 3, last + 1);
}

const BOTTLES: readonly (readonly [string, number])[] = [
  ["Gin, house", 42],
  ["Plum brandy", 45],
  ["Dark rum", 54],
  ["Elderflower liqueur", 20],
  ["Dry vermouth", 18],
];

/** What a shot of each bottle would bring into a litre jug. */
function bottles(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Shots to try next, weighed not measured");
  const heads = putRow(sheet, 2, 0, [
    "Bottle",
    "ABV, %",
    "Shot, g",
    "Pure alcohol in it, g",
    "Left",
  ]);
  const rows = BOTTLES.map(([bottle, strength], index) => {
    const cells = putRow(sheet, 3 + index, 0, [bottle, strength, kit.random.whole(18, 60)]);
    const [, abv, grams] = cells as [Spot, Spot, Spot];
    const formula = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    const alcohol = put(sheet, 3 + index, 3, shown(formula, "0.0"));
    put(sheet, 3 + index, 4, kit.random.pick(["half", "full", "a drop"]));
    kit.marked.alcohols.push({ grams, abv, alcohol });
    return [alcohol];
  });
  kit.marked.formulaColumns.push({ spots: columnOf(rows, 0), heading: heads[3]!, fixed: [] });
  const words = "All of these contain alcohol: adults only, not when pregnant, not before driving.";
  kit.marked.recipes[0]!.flags.push(put(sheet, 9, 0, words));
  note(kit, sheet, 10, 0, "Key to the cupboard is with the manager.");
}

/** Pops for grown-ups on one sheet, the bottles on another. */
function spiritPops(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Late pops");
  put(sheet, 0, 0, "Late pops, jugs for Thursday to Saturday");
  const mould = given(kit, sheet, [1, 0], ["One mould", "g", kit.random.pick([65, 80, 90])]);
  const own = { sugar: "castor sugar", water: "drinking water" };
  let row = 3;
  for (const made of boozyFirst(kit, 3)) {
    row = flavour(kit, sheet, called(upTo(made, 1800), own), row, mould);
  }
  log(
    kit,
    sheet,
    { row: row + 1, column: 0 },
    {
      ...{ heads: ["Chest", "Opening (°C)", "Closing (°C)"], when: ["Thu", "Fri", "Sat"] },
      ranges: [
        [-22, -19],
        [-19, -15],
      ],
    },
  );
  bottles(kit, addSheet(kit.marked.book, "Bottles"));
}

/** Somebody who makes pops for grown-ups. */
export const spiritPopSheets: readonly Layout[] = [
  { name: "late pops with spirits and the bottles behind them", language: "en", build: spiritPops },
];
