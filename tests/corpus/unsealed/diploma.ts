import { a1, addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { say, type Said } from "../layouts/parts";
import { List } from "../list";
import { beside } from "../newcomers/words";
import { solutionRows } from "../solutionRows";
import { table } from "../settled/words";

const VOICE: Voice = {
  lead: "Allergens present:",
  honey: "Honey: never for children under 12 months.",
  alcohol: "Alcohol: not for minors, in pregnancy or before driving.",
  nuts: "Whole nuts: choking risk under 5 years.",
  egg: "Raw egg yolk: use pasteurised yolk or take the mix to 71 °C.",
};

const SAID: readonly Said[] = [
  { label: "Freezing point of the mix (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "That is below water by (K)", states: "depression", as: "formula" },
  { label: "Water in one kilo of mix (g)", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "Sugars in the mix (% by mass)", states: "sugar share" },
    ...{ as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Share of the water frozen at −12 °C (%)", states: "ice of water" },
    ...{ as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** Five pans that the students calculate, and the syrups on the shelf under them. */
function theory(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Theory");
  put(sheet, 0, 0, "Unit 4, why what is dissolved keeps an ice soft. Five small pans");
  solutionRows(kit, sheet, {
    ...{ top: 2, left: 0, constant: "Kf, water (K kg/mol)" },
    headings: [
      ...(["In the pan", "Solute (g)", "Water (g)", "Molar mass (g/mol)"] as const),
      ...(["Particles per unit", "Molality (mol/kg)", "ΔT (K)", "Freezes at (°C)"] as const),
    ],
    proviso: (gap) => `Worked as an ideal solution. For these pans the error stays under ${gap} K.`,
  });
  put(sheet, 14, 0, "Syrups made up for the practical");
  const shelf = table(
    sheet,
    { row: 15, column: 0 },
    ["Bottle", "Sugar (g)", "Water (g)", "Sugar, % of the syrup", "Sugar, g per 100 g water"],
    ["thin", "middling", "thick"].map((word, index) => [
      ...[word, 100 * (index + 2) + 10 * random.whole(0, 5), 10 * random.whole(38, 55)],
    ]),
  );
  const sugars = columnOf(shelf.rows, 1);
  const shares = beside(kit, shelf.heads[3]!, sugars, {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=100*${a1(spot)}/(${a1(spot)}+${a1({ ...spot, column: 2 })})`,
  });
  const perWater = beside(kit, shelf.heads[4]!, sugars, {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=100*${a1(spot)}/${a1({ ...spot, column: 2 })}`,
  });
  sugars.forEach((sugar, index) =>
    marked.strengths.push({
      ...{ sugar, water: shelf.rows[index]![2]! },
      ...{ perWater: perWater[index]!, share: shares[index]! },
    }),
  );
  note(kit, sheet, 20, 0, "Bring a calculator and last week's sheet.");
}

/** How the groups stand at the benches. */
function rota(sheet: CorpusSheet, row: number): void {
  const rows = [
    ["1", "Weighing", "Churn A"],
    ["2", "Fruit", "Churn B"],
    ["3", "Syrup", "blast chiller"],
  ];
  table(sheet, { row, column: 7 }, ["Bench", "Starts with", "Then"], rows);
}

/** What is made in the afternoon, for one kilo and for all benches. */
function practical(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Practical");
  const made = called(perKilogram(kit.make(1)[0]!), { sugar: "caster sugar" });
  put(sheet, 0, 0, `Afternoon: ${made.title}`);
  const factor = putRow(sheet, 1, 0, ["Number of benches", 3])[1]!;
  const { recipe, totalRow } = new List(kit, sheet, made, {
    ...{ top: 3, left: 0, unit: "g", factor, total: "Mix" },
    columns: ["number", "name", "amount", "scaled", "share"],
    headings: {
      ...{ number: "Step", name: "Ingredient", amount: "One kilo (g)" },
      ...{ scaled: "All benches (g)", share: "Share" },
    },
  });
  const next = say(sheet, recipe, { row: totalRow + 2, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Marked on" });
  tellIn(sheet, recipe, { row: next + 2, column: 1 }, VOICE);
  rota(sheet, 3);
  note(kit, sheet, 8, 7, "Benches are drawn by lot.");
}

/** A diploma course. */
export const diplomas: readonly Layout[] = [
  {
    ...{ name: "pastry diploma, five pans in theory and a practical", language: "en" },
    build: (kit) => {
      theory(kit);
      practical(kit);
    },
  },
];
