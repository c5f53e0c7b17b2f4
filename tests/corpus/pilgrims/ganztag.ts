import { callFunction } from "../../../src/worksheet/callFunction";
import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf } from "../strollers/words";
import { byHand, inHundred, perKilo, warnAt } from "./words";

const HEADS = [
  ...["Zutat", "Probeansatz (g)", "Wasser in %", "Zucker in %"],
  ...["Wasser (g)", "Zucker (g)", "für alle (g)"],
];

/** Sugars in 100 g, to a tenth. */
function sugarsIn(name: string): number {
  const grams = callFunction("COMPONENT", [[name]], [[100]], "sugars")[0]![0];
  return typeof grams === "number" ? Number(grams.toFixed(1)) : 0;
}

interface Needed {
  readonly children: Spot;
  readonly portion: Spot;
}

/** Water, sugar and the large batch, each in a column of formulas. */
function worked(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { children, portion }: Needed) {
  const list = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: HEADS,
      cells: (name, grams) => [
        ...[name, grams, shown(inHundred(name, "water"), "0.0"), shown(sugarsIn(name), "0.0")],
      ],
    },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 0, "Summe");
  const part = (column: number) =>
    beside(kit, heads[column]!, amounts, {
      ...{ sheet, format: "0.0" },
      content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: column - 2 })}/100`,
    });
  const [water, sugar] = [part(4), part(5)];
  const factor = `${fixed(children)}*${fixed(portion)}/${fixed(total)}`;
  const alsoAmounts = beside(kit, heads[6]!, amounts, {
    ...{ sheet, format: "0", fixed: [total, children, portion] },
    content: (spot) => `=${a1(spot)}*${factor}`,
  });
  sumOf(kit, sheet, { row: end, column: 6 }, alsoAmounts, "0");
  const lines = { names, amounts, alsoAmounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, lines);
  byHand(recipe, "water", heads[4]!, sumOf(kit, sheet, { row: end, column: 4 }, water, "0"));
  sumOf(kit, sheet, { row: end, column: 5 }, sugar, "0");
  return { recipe, water, sugar, alsoAmounts };
}

/** How sweet it is, by formulas of the cook's own; gives the next free row. */
function sweetness(sheet: CorpusSheet, recipe: MarkedRecipe, water: string, sugar: string): number {
  const top = recipe.total!.row + 2;
  const all = span(recipe.amounts);
  const own = [
    ["sugar share", "Zucker in der Masse (%)", `=100*SUM(${sugar})/SUM(${all})`],
    ["sugar per 100 g water", "Zucker auf 100 g Wasser (g)", `=100*SUM(${sugar})/SUM(${water})`],
  ] as const;
  own.forEach(([states, words, formula], index) => {
    const [label, spot] = putRow(sheet, top + index, 0, [words, shown(formula, "0.0")]);
    byHand(recipe, states, label!, spot!, states === "sugar share" ? 100 : 1);
  });
  return say(sheet, recipe, { row: top + 2, column: 0 }, [
    { label: "friert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
    {
      label: "Anteil Wasser gefroren bei −18 °C (%)",
      ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
    },
  ]);
}

/** What has to be bought for all, on a sheet of its own. */
function shopping(kit: Kit, { made, names }: MarkedRecipe, all: readonly Spot[]): void {
  const sheet = addSheet(kit.marked.book, "Bestellung");
  put(sheet, 0, 0, "Bestellung bis Mittwoch");
  const heads = putRow(sheet, 2, 0, ["Artikel", "kg", "€ je kg", "€"]);
  const rows = names.map((name, index) => {
    const row = 3 + index;
    const at = { sheet: sheet.name, row, column: 1 };
    return putRow(sheet, row, 0, [
      `=${calledFrom(at, name)}`,
      shown(`=${calledFrom(at, all[index]!)}/1000`, "0.000"),
      shown(perKilo(kit, made.lines[index]!.en), "0.00"),
    ]);
  });
  const kilos = rows.map((cells) => cells[1]!);
  kit.marked.formulaColumns.push({ spots: kilos, heading: heads[1]!, fixed: [] });
  const euros = beside(kit, heads[3]!, kilos, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  sumOf(kit, sheet, { row: 3 + rows.length, column: 3 }, euros, "0.00");
  put(sheet, 3 + rows.length, 0, "Kosten");
}

/** Ice for all children of a school, water and sugar worked out by hand. */
function school(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eistag");
  const first = madeOf(kit, 1, (each) => !isAlcoholic(each))[0]!;
  const made = called(first, { Wasser: "Trinkwasser" });
  put(sheet, 0, 0, `Eistag in der Ganztagsschule: ${made.title}`);
  const children = putRow(sheet, 2, 0, ["Kinder", kit.random.whole(60, 140)])[1]!;
  const words = { label: "Portion (g)", bare: "Portion", value: kit.random.pick([60, 70, 80]) };
  const portion = input(kit, sheet, { row: 3, column: 0 }, words);
  const { recipe, water, sugar, alsoAmounts } = worked(kit, sheet, made, { children, portion });
  const next = sweetness(sheet, recipe, span(water), span(sugar));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "ausgegeben wird" });
  const after = warnAt(sheet, recipe, { row: next + 1, column: 0 }, "Aushang: enthält");
  note(kit, sheet, after + 1, 0, "Gehalte aus der Nährwerttabelle abgeschrieben.");
  shopping(kit, recipe, alsoAmounts);
}

/** A cook at an all-day school. */
export const ganztage: readonly Layout[] = [
  { name: "Ganztagsschule, Wasser und Zucker von Hand", language: "de", build: school },
];
