import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { sumOf } from "../layouts/parts";
import { changed, plainOf } from "../lodgers/swaps";
import { down, given } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { log, OURS } from "./words";

const TOP = 7;

/** The start and what two trials do to it, in per cent. */
function trials(kit: Kit): readonly MadeRecipe[] {
  const made = plainOf(kit);
  const start = sound(kit, made);
  return [made, changed(start, 0.8), changed(start, 0.6, "dextrose monohydrate")].map((each) =>
    called(hundred(each), { sugar: "castor sugar", "skim milk powder": "SMP" }),
  );
}

const facts = (temperature: Spot): readonly Fact[] => [
  ["Freezing starts (°C)", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Depression (K)", { states: "depression", as: "typed", decimals: 2 }],
  ["Water, g in 100 g", { states: "water", as: "formula", format: "0.0" }],
  ["Sugars, g per 100 g water", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    "Water frozen in the cabinet (%)",
    { states: "ice of water", as: "formula", format: "0", temperature, temperatureC: -18 },
  ],
];

/** What the pilot batch takes, beside the per cents. */
function weighed(
  kit: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  shares: readonly Spot[],
  batch: Spot,
) {
  const spots = shares.map((share) =>
    put(sheet, share.row, heading.column, shown(`=${a1(share)}*${fixed(batch)}/100`, "0;-0;")),
  );
  kit.marked.formulaColumns.push({ spots, heading, fixed: [batch] });
  sumOf(kit, sheet, { row: shares.at(-1)!.row + 1, column: heading.column }, spots, "0");
}

/** What five people thought, and how cold their sticks were. */
function panel(kit: Kit, sheet: CorpusSheet, row: number): void {
  put(sheet, row, 8, "Panel, 1 (no) to 9 (more!)");
  putRow(sheet, row + 1, 8, ["Taster", "T0", "T1", "T2"]);
  ["JB", "Lu", "Noor", "PK", "Ida"].forEach((who, index) =>
    putRow(sheet, row + 2 + index, 8, [who, ...[0, 1, 2].map(() => kit.random.whole(3, 9))]),
  );
}

/** Three trials of one mix, per cent and grams by turns. */
function stickTrials(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Trials");
  const list = trials(kit);
  put(sheet, 0, 0, `${list[0]!.title}, stick version: T0 to T2`);
  const cabinet = given(kit, sheet, [2, 0], ["Blast cabinet", "°C", -18]);
  const batch = given(
    kit,
    sheet,
    [3, 0],
    ["Pilot batch", "g", kit.random.pick([1500, 2500, 4000])],
  );
  const items = down(sheet, [TOP, 0], itemsOf(list));
  put(sheet, TOP - 1, 0, "Raw material");
  const end = TOP + items.length;
  put(sheet, end, 0, "Mix");
  list.forEach((made, index) => {
    const column = 1 + 2 * index;
    put(sheet, 5, column, ["T0 as sold", "T1 sugar down a fifth", "T2 dextrose for 40 %"][index]);
    const heads = putRow(sheet, TOP - 1, column, [`T${index} (%)`, `T${index}, pilot (g)`]);
    const plan = { items, left: 1, step: 2, again: 1, unit: "%", format: "0.0" } as const;
    const recipe = downColumn(kit, sheet, made, index, { ...plan, amountLabel: heads[0]! });
    const shares = items.map((spot) => ({ ...spot, column }));
    weighed(kit, sheet, heads[1]!, shares, batch);
    factsDown(sheet, recipe, facts(cabinet), { row: end + 2, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 7, column });
    tellIn(sheet, recipe, { row: end + 8, column }, OURS);
  });
  putRow(sheet, end + 7, 0, ["Aim"]);
  putRow(sheet, end + 8, 0, ["On the wrapper"]);
  panel(kit, sheet, 5);
  log(
    kit,
    sheet,
    { row: end + 2, column: 8 },
    {
      ...{ heads: ["Stick pulled", "Core (°C)"], when: ["20 min", "40 min", "60 min"] },
      ...{ ranges: [[-17, -8]], isFalling: true },
    },
  );
  note(kit, sheet, end + 10, 0, "Sticks go in when a spoon stands up in the mould.");
}

/** Somebody who tries mixes on sticks. */
export const stickTrialSheets: readonly Layout[] = [
  {
    name: "stick bench, three trials in per cent and pilot grams",
    language: "en",
    build: stickTrials,
  },
];
