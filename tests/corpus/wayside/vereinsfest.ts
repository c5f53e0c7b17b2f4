import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf, upTo } from "../strollers/words";
import { beside } from "../newcomers/words";
import { little, readings, SCHLICHT } from "./words";

const FACTS: readonly (readonly [string, ResultPlan])[] = [
  ["Freezing point °C", { states: "freezing point", as: "typed", decimals: 1 }],
  ["ΔT (K)", { states: "depression", as: "formula", format: "0.00" }],
  ["H2O total (g)", { states: "water", as: "formula", format: "0" }],
  [
    "Anteil Wasser als Eis bei −12 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  ],
  ["Zucker in der Mix (%)", { states: "sugar share", as: "typed", decimals: 1 }],
];

const TOP = 5;

/** Ices along the rows, what has to be known of them right of the sum. */
function mixes(kit: Kit, sheet: CorpusSheet): readonly Spot[] {
  const own = { Zucker: "Haushaltszucker" };
  const mades = kit.make(4).map((made) => called(upTo(made, 2000), own));
  const label = put(sheet, TOP - 1, 2, "Gramm für 1 Topf");
  const items = putRow(sheet, TOP, 2, itemsOf(mades));
  const right = 2 + items.length;
  putRow(sheet, TOP, 0, ["Sorte", "wer macht's"]);
  put(sheet, TOP, right, "Total");
  const heads = FACTS.map(([words], index) => put(sheet, TOP, right + 1 + index, words));
  const last = right + 1 + heads.length;
  putRow(sheet, TOP, last, ["soll sein", "Schild"]);
  return mades.map((made, index) => {
    const row = TOP + 1 + index;
    putRow(sheet, row, 0, [made.title, ["Uli", "Resi", "Jugend", "Uli"][index]]);
    const plan = { items, unit: "g", format: "0", amountLabel: label } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    FACTS.forEach(([, fact], at) => {
      resultAt(sheet, recipe, heads[at]!, { row, column: heads[at]!.column }, fact, () =>
        fact.as === "formula" ? recipe.lines : "",
      );
    });
    nameTarget(sheet, recipe, { row, column: last });
    tellIn(sheet, recipe, { row, column: last + 1 }, SCHLICHT);
    return recipe.total!;
  });
}

/** Who needs how much: pots for the day, and what they weigh. */
function pots(kit: Kit, sheet: CorpusSheet, totals: readonly Spot[]): void {
  const row = TOP + totals.length + 3;
  const [label, factor] = putRow(sheet, row, 0, ["Portion (g)", kit.random.pick([70, 80, 90])]);
  kit.marked.inputs.push({ label: label!, value: factor!, bare: "Portion" });
  const names = totals.map((spot) => `=${a1({ ...spot, column: 0 })}`);
  const { heads, rows } = little(
    sheet,
    { row: row + 2, column: 0 },
    ["Sorte", "Töpfe", "Portionen"],
    names.map((name) => [name, kit.random.whole(2, 6)]),
  );
  beside(
    kit,
    heads[2]!,
    rows.map((cells) => cells[1]!),
    {
      ...{ sheet, format: "0", fixed: [factor!] },
      content: (spot, index) => `=${a1(spot)}*${a1(totals[index]!)}/${fixed(factor!)}`,
    },
  );
}

/** A club's summer fair: everything on one sheet, in two languages at once. */
function vereinsfest(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Tabelle1");
  note(kit, sheet, 0, 3, "!!! Liste NICHT umsortieren (Resi) !!!");
  put(sheet, 2, 5, "Sommerfest Schützenheim – Ice Corner");
  const totals = mixes(kit, sheet);
  pots(kit, sheet, totals);
  const row = TOP + totals.length + 5;
  readings(
    kit,
    sheet,
    { row, column: 5 },
    ["Fridge check", "Truhe Keller °C", "Wagen °C"],
    ["Fr abends", "Sa früh", "Sa mittags", "So früh", "So mittags"],
    [-20, -15],
  );
  little(
    sheet,
    { row, column: 10 },
    ["Dienst", "von", "bis"],
    [
      ["Uli", shown(0.4583, "hh:mm"), shown(0.5833, "hh:mm")],
      ["Resi + Jugend", shown(0.5833, "hh:mm"), shown(0.75, "hh:mm")],
    ],
  );
  note(kit, sheet, row + 8, 2, "Becher sind noch 2 Kartons vom Fasching da");
}

/** A club that makes ice once a year. */
export const vereinsfeste: readonly Layout[] = [
  { name: "Schützenheim, Sorten als Zeilen, halb englisch", language: "de", build: vereinsfest },
];
