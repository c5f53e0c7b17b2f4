import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { perKilogram } from "../kitchens/hand";
import { changed, plainOf } from "../lodgers/swaps";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { downward } from "./words";

const VOICE: Voice = {
  lead: "Panel briefing, contains",
  honey: "Honey: not for infants below 12 months.",
  alcohol: "Alcohol: no children, no pregnant tasters, nobody who drives afterwards.",
  nuts: "Whole nuts: not for children below 5, choking.",
  egg: "Raw egg yolk: treated at 71 °C, else pasteurised yolk.",
};

const facts = (temperature: Spot, temperatureC: number): readonly Fact[] => [
  ["FP calc. (°C)", { states: "freezing point", as: "formula" }],
  ["Depression (K)", { states: "depression", as: "typed" }],
  ["Water (g/kg)", { states: "water", as: "formula", format: "0" }],
  ["Dissolved solids (g/kg)", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Ice at evaluation, of the mix (%)",
    { states: "ice of mix", as: "formula", format: "0.0", temperature, temperatureC },
  ],
  ["Sugars (g/100 g water)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

interface Trial {
  readonly name: string;
  readonly about: string;
  readonly made: MadeRecipe;
}

/** The control and four trials of it. */
function trials(kit: Kit): readonly Trial[] {
  const control = plainOf(kit);
  const plain = sound(kit, control);
  return [
    { name: "T0", about: "control", made: perKilogram(control) },
    { name: "T1", about: "sugar −15 %", made: perKilogram(changed(plain, 0.85)) },
    {
      name: "T2",
      about: "fructose for ¼ of the sugar",
      made: perKilogram(changed(plain, 0.75, "fructose")),
    },
    {
      ...{ name: "T3", about: "dextrose for ⅓ of the sugar" },
      made: perKilogram(changed(plain, 0.67, "dextrose monohydrate")),
    },
    {
      name: "T4",
      about: "fructose for ½ of the sugar",
      made: perKilogram(changed(plain, 0.5, "fructose")),
    },
  ];
}

const TOP = 7;

/** The tasters' marks under the trials, with the mean. */
function marks(kit: Kit, sheet: CorpusSheet, row: number, count: number): void {
  put(sheet, row, 0, "Hardness, 1 soft to 9 hard");
  ["Taster 1", "Taster 2", "Taster 3", "Mean"].forEach((words, at) =>
    put(sheet, row + 1 + at, 0, words),
  );
  const heading = { sheet: sheet.name, row: row + 4, column: 0 };
  const spots = Array.from({ length: count }, (_, index) => {
    const column = 1 + index;
    const given = downward(
      sheet,
      { row: row + 1, column },
      [1, 2, 3].map(() => kit.random.whole(3, 8)),
    );
    const mean = `=AVERAGE(${a1(given[0]!)}:${a1(given[2]!)})`;
    return put(sheet, row + 4, column, shown(mean, "0.0"));
  });
  kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
}

/** What the thermometer said of each trial as it left the machine. */
function drawn(kit: Kit, sheet: CorpusSheet, row: number, count: number): void {
  const heading = put(sheet, row, 0, "Drawn at (°C)");
  const spots = Array.from({ length: count }, (_, index) =>
    put(sheet, row, 1 + index, shown(-kit.random.whole(48, 68) / 10, "0.0")),
  );
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}

/** One trial down its column. */
function trial(
  kit: Kit,
  sheet: CorpusSheet,
  { made }: Trial,
  at: number,
  plan: Plan,
): MarkedRecipe {
  const { items, amountLabel, end, said } = plan;
  const recipe = downColumn(kit, sheet, made, at, {
    ...{ items, left: 1, unit: "g", format: "0", amountLabel },
  });
  factsDown(sheet, recipe, said, { row: end + 2, column: 1 + at, labels: 0, items });
  nameTarget(sheet, recipe, { row: end + 9, column: 1 + at });
  tellIn(sheet, recipe, { row: end + 10, column: 1 + at }, VOICE);
  return recipe;
}

interface Plan {
  readonly items: readonly Spot[];
  readonly amountLabel: Spot;
  readonly end: number;
  readonly said: readonly Fact[];
}

/** A control and its trials, ingredients down the side. */
function benchTrials(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sugar trials");
  const list = trials(kit);
  putRow(sheet, 0, 0, ["Project", `${list[0]!.made.title}, softer from the freezer`]);
  const temperatureC = kit.random.pick([-14, -15, -16]);
  const words = { label: "Evaluated at (°C)", bare: "Evaluated at", value: temperatureC };
  const temperature = input(kit, sheet, { row: 1, column: 0 }, words);
  putRow(sheet, 3, 0, ["Trial", ...list.map(({ name }) => name)]);
  putRow(sheet, 4, 0, ["Change", ...list.map(({ about }) => about)]);
  putRow(sheet, 5, 0, ["Made", ...list.map((_, at) => `${3 + at} Feb`)]);
  const amountLabel = put(sheet, TOP - 1, 0, "g per kg of mix");
  const items = downward(sheet, { row: TOP, column: 0 }, itemsOf(list.map(({ made }) => made)));
  const end = TOP + items.length;
  put(sheet, end, 0, "Check sum");
  put(sheet, end + 9, 0, "Brief");
  put(sheet, end + 10, 0, "Declare");
  const plan = { items, amountLabel, end, said: facts(temperature, temperatureC) };
  list.forEach((each, at) => trial(kit, sheet, each, at, plan));
  drawn(kit, sheet, end + 12, list.length);
  marks(kit, sheet, end + 14, list.length);
  note(
    kit,
    sheet,
    end + 20,
    0,
    "Samples tempered overnight in the small cabinet, coded before tasting.",
  );
}

/** Trials of a product developer. */
export const benchTrialSheets: readonly Layout[] = [
  { name: "developer, control and four sugar trials across", language: "en", build: benchTrials },
];
