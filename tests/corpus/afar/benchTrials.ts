import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import type { MadeRecipe } from "../recipes";
import { itemsOf, temperatures } from "../strollers/words";

const VOICE: Voice = {
  lead: "Tasters told:",
  honey: "Honey in it, not for under 12 months.",
  alcohol: "Alcohol in it, none for minors, pregnant tasters or drivers.",
  nuts: "Whole nuts in it, choking hazard for children under 5.",
  egg: "Raw egg yolk in it, mix heated to 71 °C or pasteurised yolk.",
};

const FACTS: readonly Fact[] = [
  ["Initial freezing pt, °C", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Lowered by, K", { states: "depression", as: "formula", format: "0.00" }],
  ["Water, g in 100 g", { states: "water", as: "typed", decimals: 1 }],
  ["Dissolved, g in 100 g", { states: "dissolved", as: "typed", decimals: 1 }],
  [
    "Sugars on water, g per 100 g of water",
    { states: "sugar per 100 g water", as: "typed", decimals: 1 },
  ],
  [
    "Water frozen in that cabinet, %",
    { states: "ice of water", as: "formula", temperatureC: -8, format: "0" },
  ],
  [
    "Ice at −18 °C, % of the mix",
    { states: "ice of mix", as: "typed", temperatureC: -18, decimals: 1 },
  ],
];

const TOP = 5;
const CODES = ["P", "Q", "R", "S"];

/** The mixes side by side, a blank column between names and shares. */
function mixes(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): number {
  const names = itemsOf(mades);
  const items = names.map((name, index) => put(sheet, TOP + index, 0, name));
  const amountLabel = put(sheet, TOP - 2, 2, "per cent by weight");
  put(sheet, TOP - 1, 0, "Sample");
  const end = TOP + items.length;
  put(sheet, end, 0, "Σ");
  const probe = putRow(sheet, end + 2, 0, ["Bench cabinet (°C)", undefined, -8]);
  kit.marked.inputs.push({ label: probe[0]!, value: probe[2]!, bare: "Bench cabinet" });
  const facts = FACTS.map(([words, plan]): Fact =>
    plan.states === "ice of water" ? [words, { ...plan, temperature: probe[2]! }] : [words, plan],
  );
  put(sheet, end + 11, 0, "Brief");
  put(sheet, end + 12, 0, "Panel sheet");
  mades.forEach((made, at) => {
    const column = 2 + at;
    put(sheet, TOP - 1, column, `${CODES[at]} – ${made.title}`);
    const plan = { items, left: 2, unit: "%", format: "0.0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, at, plan);
    factsDown(sheet, recipe, facts, { row: end + 3, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 11, column });
    tellIn(sheet, recipe, { row: end + 12, column }, VOICE);
  });
  return end + 14;
}

const MINUTES = [0, 10, 20, 30, 45, 60];

/** How fast each sample ran through the mesh at room temperature. */
function drips(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, TOP - 2, 8, "Drip test, 150 g on the mesh");
  const codes = CODES.map((code) => `${code} dripped (g)`);
  const heads = putRow(sheet, TOP - 1, 8, ["Minute", ...codes, "Room (°C)"]);
  const speeds = codes.map(() => kit.random.between(0.9, 1.9));
  const rows = MINUTES.map((minute, index) => {
    const grams = speeds.map((speed) => Math.round(Math.max(0, minute - 8) * speed));
    const room = shown(kit.random.whole(208, 221) / 10, "0.0");
    return putRow(sheet, TOP + index, 8, [minute, ...grams, room]);
  });
  temperatures(kit, heads[5]!, columnOf(rows, 5));
}

const DRAWERS = [
  ["top", "P and Q"],
  ["middle", "R and S"],
  ["bottom", "spares"],
] as const;

/** Where the samples lie and how cold the drawers became. */
function drawers(kit: Kit, sheet: CorpusSheet): void {
  const heads: Spot[] = putRow(sheet, 13, 8, ["Drawer", "Samples", "Logger low (°C)"]);
  const rows = DRAWERS.map((cells, index) => {
    const logged = shown(-kit.random.whole(186, 231) / 10, "0.0");
    return putRow(sheet, 14 + index, 8, [...cells, logged]);
  });
  temperatures(kit, heads[2]!, columnOf(rows, 2));
}

/** Four samples of a developer in columns, drip test and drawers beside them. */
function benchTrials(kit: Kit): void {
  const own = { "lemon juice": "juice of lemons", "skim milk powder": "skimmed milk powder" };
  const mades = kit.make(4).map((made) => called(hundred(made), own));
  const sheet = addSheet(kit.marked.book, "Bench wk 23");
  putRow(sheet, 0, 0, ["Hardness trials, week 23", undefined, "four samples, 600 g each"]);
  const next = mixes(kit, sheet, mades);
  drips(kit, sheet);
  drawers(kit, sheet);
  note(kit, sheet, next, 0, "Blade penetration to follow once the rig is back from calibration.");
}

/** A developer's bench. */
export const benchTrialSheets: readonly Layout[] = [
  { name: "hardness trials, four samples with drip test", language: "en", build: benchTrials },
];
