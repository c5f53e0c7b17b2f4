import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { freezesAt, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { solution } from "../solution";

const VOICE: Voice = {
  lead: "Declare on the pass card:",
  honey: "honey inside, not for babies younger than 12 months.",
  alcohol: "alcohol inside, not for children, pregnant guests or anyone driving.",
  nuts: "whole nuts inside, choking hazard for children under 5.",
  egg: "raw egg yolk inside, heat the mix to 71 °C or use pasteurised yolk.",
};

const SAID: readonly Said[] = [
  { label: "Initial freezing point /°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Depression /K", states: "depression", as: "formula", format: "0.00" },
  { label: "Solids dissolved /g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Water frozen at −16 °C /%",
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

const SYRUPS = ["soaking", "poaching", "sorbet base", "candying, first day"] as const;

/** Syrups of the cold kitchen, their strength told both ways. */
function syrups(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { random, marked } = kit;
  put(sheet, row - 1, 0, "Syrups in the cold kitchen");
  const heads = putRow(sheet, row, 0, [
    ...["For", "Sugar /g", "Water /g", "g sugar per 100 g water", "% sugar by mass"],
    "Freezing point /°C",
  ]);
  const rows = SYRUPS.map((use, index) => {
    const waterGrams = random.pick([500, 800, 1000]);
    const sugarGrams = Math.round((waterGrams * (30 + 12 * index + random.whole(0, 8))) / 100);
    const perWater = Number(((100 * sugarGrams) / waterGrams).toFixed(1));
    const share = Number(((100 * sugarGrams) / (waterGrams + sugarGrams)).toFixed(1));
    const point = freezesAt(["sucrose", "water"], [sugarGrams, waterGrams]);
    const numbers = [perWater, share, point].map((each) => shown(each, "0.0"));
    return putRow(sheet, row + 1 + index, 0, [use, sugarGrams, waterGrams, ...numbers]);
  });
  rows.forEach(([, sugar, water, perWater, share]) =>
    marked.strengths.push({ sugar: sugar!, water: water!, perWater: perWater!, share: share! }),
  );
  const points = { spots: columnOf(rows, 5), heading: heads[5]!, total: null };
  marked.numberColumns.push({ ...points, kind: "temperature" });
}

/** The dish of the practical, its sum above the lines. */
function practical(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, { sugar: "granulated sugar", salt: "table salt" });
  put(sheet, 0, 0, `Practical 5: ${made.title}`);
  putRow(sheet, 1, 0, ["Brigade", "B", undefined, "Bench", 4]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Mise en place", "Mass /g", "Done by"],
      cells: (name, grams) => [name, grams, kit.random.pick(["AK", "LM", "RS"])],
    },
  );
  const total = sumOf(kit, sheet, { row: 3, column: 1 }, amounts);
  put(sheet, 3, 0, "Whole mix /g");
  const cells = { names, amounts, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: 4, column: 4 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Brief" });
  tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
  syrups(kit, sheet, end + 5);
  note(kit, sheet, end + 11, 0, "Leave the bench dry, thermometers back in the drawer.");
}

/** A hotel school: the calculation, then the practical. */
function hotelSchool(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Theory 5");
  put(sheet, 0, 0, "Theory 5: what three things do to one jug of water");
  solution(kit, sheet, {
    ...{ top: 2, left: 1, count: 3 },
    headings: ["Into the jug", "m /g", "M /(g/mol)", "Particles i", "i·n /mol"],
    words: {
      water: ["Jug holds, water (g)", "Jug holds, water"],
      constant: "Kf, water (K·kg/mol)",
      depression: "Lowering ΔT (K)",
      freezingPoint: "Jug freezes at (°C)",
      proviso: (gap) => `Ideal law: for a jug as thin as this it is right to ${gap} K.`,
    },
  });
  practical(kit, addSheet(kit.marked.book, "Practical 5"));
}

/** Sheets of a hotel school. */
export const hotelSchools: readonly Layout[] = [
  { name: "hotel school, theory and practical 5", language: "en", build: hotelSchool },
];
