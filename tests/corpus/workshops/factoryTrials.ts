import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { changed, plainOf } from "../lodgers/swaps";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { readings, rowsOf, WARNS } from "./words";

interface Trial {
  readonly code: string;
  readonly change: string;
  readonly made: MadeRecipe;
}

const KNOWN: readonly Said[] = [
  { label: "Initial freezing point", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "FPD", inCell: "K", states: "depression", as: "typed" },
  {
    ...{ label: "Sugars per 100 g of water", inCell: "g" },
    ...{ states: "sugar per 100 g water", as: "formula", format: "0.0" },
  },
  { label: "Dissolved matter", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
];

const WIDE = 9;

/** One trial: its code and change, its lines, its figures at the right; gives the next free row. */
function trial(kit: Kit, sheet: CorpusSheet, { code, change, made }: Trial, top: number, at: Spot) {
  putRow(sheet, top, 0, [code, undefined, change]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Step", "Material", "g / 1 kg pot", "% w/w", "Lot"],
      cells: (name, grams, index) => [
        ...[index + 1, name, grams, undefined, `L${kit.random.whole(2100, 2999)}`],
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  put(sheet, end, 1, "Pot");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const shares = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [total] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}*100`,
  });
  sumOf(kit, sheet, { row: end, column: 3 }, shares, "0.0");
  const cells = { names, amounts, unit: "g", total, amountLabel: heads[2]! } as const;
  const recipe = markRecipe(kit, made, { ...cells, alsoAmounts: shares });
  const ice: Said = {
    ...{ label: "Water frozen at the panel freezer's setting", inCell: "%", format: "0" },
    ...{ states: "ice of water", as: "formula", temperatureC: -16, temperature: at },
  };
  const next = say(sheet, recipe, { row: top + 1, column: 6 }, [...KNOWN, ice]);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Texture brief" });
  tellIn(sheet, recipe, { row: next + 1, column: 6 }, WARNS);
  return Math.max(end, next + 1) + 3;
}

/** What the tasters gave each trial, and what the mean is. */
function panel(kit: Kit, trials: readonly Trial[]): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Panel");
  put(sheet, 0, 0, "Scores, 1 (dislike) to 9 (like)");
  const heads = putRow(sheet, 2, 0, ["Trial", "Taster 1", "Taster 2", "Taster 3", "Mean"]);
  const means = trials.map(({ code }, index) => {
    const row = 3 + index;
    const scores = [1, 2, 3].map(() => random.whole(4, 9));
    const [, from, , to] = putRow(sheet, row, 0, [code, ...scores]);
    return put(sheet, row, 4, shown(`=AVERAGE(${a1(from!)}:${a1(to!)})`, "0.0"));
  });
  marked.formulaColumns.push({ spots: means, heading: heads[4]!, fixed: [] });
  readings(
    kit,
    sheet,
    { row: 9, column: 0 },
    {
      heads: ["Pot taken out", "Core when tasted (°C)"],
      when: trials.map(({ code }) => code),
      tenths: [-148, -119],
    },
  );
  note(kit, sheet, 15, 0, "Pots are coded, the tasters do not see this page.");
}

/** A base and three changes to it, one below the other. */
function testKitchen(kit: Kit): void {
  const own = { sugar: "granulated sugar", "skim milk powder": "skimmed milk powder" };
  const base = plainOf(kit);
  const plain = sound(kit, base);
  const trials = [
    ["T-01", "as the brief has it", base],
    ["T-02", "sugar down by 15 %", changed(plain, 0.85)],
    ["T-03", "30 % of the sugar as dextrose", changed(plain, 0.7, "dextrose monohydrate")],
    ["T-04", "20 % of the sugar as fructose", changed(plain, 0.8, "fructose")],
  ].map(([code, change, made]) => ({
    ...{ code: code as string, change: change as string },
    made: called(perKilogram(made as MadeRecipe), own),
  }));
  const sheet = addSheet(kit.marked.book, "Trials");
  put(sheet, 0, 0, `Project Snowdrop: ${base.title.toLowerCase()} for the retail range`);
  const [label, at] = putRow(sheet, 1, 0, ["Panel freezer (°C)", -16]) as [Spot, Spot];
  kit.marked.inputs.push({ label, value: at, bare: "Panel freezer" });
  let top = 3;
  for (const each of trials) top = trial(kit, sheet, each, top, at);
  rowsOf(sheet, { row: 3, column: WIDE + 1 }, [
    ["Scale", "0.1 g, calibrated in May"],
    ["Freezer", "batch, 1 litre bowl"],
    ["Ageing", "overnight"],
  ]);
  panel(kit, trials);
}

/** A factory's test kitchen. */
export const factoryTrials: readonly Layout[] = [
  { name: "factory test kitchen, four pots and a panel", language: "en", build: testKitchen },
];
