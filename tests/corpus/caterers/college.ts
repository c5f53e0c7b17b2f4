import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { perKilogram } from "../kitchens/hand";
import { down } from "../lodgers/words";
import { changed, plainOf } from "../lodgers/swaps";
import type { MadeRecipe } from "../recipes";
import { solution } from "../solution";
import { itemsOf } from "../strollers/words";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Allergens:",
  honey: "Honey: unsuitable under 12 months of age.",
  alcohol: "Alcohol: not for children, in pregnancy or before driving.",
  nuts: "Whole nuts: choking hazard below 5 years.",
  egg: "Raw egg yolk: heat to 71 °C, or pasteurised yolk only.",
};

const FACTS: readonly Fact[] = [
  ["Depression of the freezing point (K)", { states: "depression", as: "formula" }],
  ["Freezing point (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Total water (g)", { states: "water", as: "formula", format: "0" }],
  ["Solids in solution (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Water frozen at −18 °C (%)",
    { states: "ice of water", as: "formula", format: "0", temperatureC: -18 },
  ],
];

/** A temperature in a cell of its own that the formulas read. */
function cabinet(kit: Kit, sheet: CorpusSheet, row: number): Spot {
  const [label, value] = putRow(sheet, row, 0, ["Cabinet in room 12 (°C)", -18]);
  kit.marked.inputs.push({ label: label!, value: value!, bare: "Cabinet in room 12" });
  return value!;
}

/** The base and what the groups make of it. */
function versions(kit: Kit): readonly (readonly [string, MadeRecipe])[] {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  return [
    ["Base recipe", perKilogram(made)],
    ["Group A: a quarter less sugar", perKilogram(changed(plain, 0.75))],
    ["Group B: fructose for a third", perKilogram(changed(plain, 0.67, "fructose"))],
    ["Group C: dextrose for half", perKilogram(changed(plain, 0.5, "dextrose monohydrate"))],
  ];
}

const TOP = 13;

/** Answers above, lines below; each version's change against the base beside it. */
function table(kit: Kit, sheet: CorpusSheet): void {
  const list = versions(kit);
  put(sheet, 0, 0, `${list[0]![1].title} and what three groups changed in it`);
  const temperature = cabinet(kit, sheet, 2);
  const facts = FACTS.map(([words, plan]): Fact =>
    plan.states.startsWith("ice") ? [words, { ...plan, temperature }] : [words, plan],
  );
  const items = down(sheet, [TOP, 0], itemsOf(list.map(([, made]) => made)));
  const amountLabel = put(sheet, TOP - 1, 0, "Grams in 1 kg of mix");
  putRow(sheet, TOP + items.length, 0, ["Sum"]);
  put(sheet, 10, 0, "Wanted");
  put(sheet, 11, 0, "Declare");
  list.forEach(([name, made], index) => {
    const column = 1 + index;
    put(sheet, 4, column, name);
    put(sheet, TOP - 1, column, name.split(":")[0]);
    const plan = { items, left: 1, unit: "g", format: "0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    factsDown(sheet, recipe, facts, { row: 5, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: 10, column });
    tellIn(sheet, recipe, { row: 11, column }, VOICE);
  });
  const heads = list
    .slice(1)
    .map(([name], index) =>
      put(sheet, TOP - 1, 6 + index, `${name.split(":")[0]} against base (g)`),
    );
  heads.forEach((heading, index) => {
    const spots = items.map((spot) => {
      const [base, own] = [
        { ...spot, column: 1 },
        { ...spot, column: 2 + index },
      ];
      return put(sheet, spot.row, heading.column, shown(`=${a1(own)}-${a1(base)}`, "+0;-0;0"));
    });
    kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
  });
  note(kit, sheet, TOP + items.length + 2, 0, "Groups taste blind and write before they talk.");
}

/** The base and its variants, and the sum that the students do by hand. */
function college(kit: Kit): void {
  table(kit, addSheet(kit.marked.book, "Base and groups"));
  const sheet = addSheet(kit.marked.book, "By hand");
  put(sheet, 0, 0, "Work it out yourself: two things dissolved in one pan of water");
  solution(kit, sheet, {
    ...{ top: 2, left: 0, count: 2, inputsFirst: true },
    headings: ["Dissolved", "Weighed (g)", "M (g/mol)", "Particles each", "Moles of particles"],
    words: {
      water: ["Water in the pan (g)", "Water in the pan"],
      constant: "Kf of water (K·kg/mol)",
      depression: "Freezing point lowered by (K)",
      freezingPoint: "So it freezes at (°C)",
      proviso: (gap) => `Ideal law; a real solution like this one is within ${gap} K of it.`,
    },
  });
}

/** A college that teaches catering. */
export const colleges: readonly Layout[] = [
  { name: "catering college, base recipe and three groups", language: "en", build: college },
];
