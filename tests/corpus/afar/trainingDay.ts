import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import {
  freezesAt,
  markRecipe,
  problems,
  say,
  sumOf,
  type Problem,
  type Said,
} from "../layouts/parts";
import { listed } from "../newcomers/words";
import { temperatures } from "../strollers/words";

const VOICE: Voice = {
  lead: "Before anyone licks the spoon:",
  honey: "honey – no infants under 12 months.",
  alcohol: "alcohol – no minors, nobody pregnant, nobody driving home.",
  nuts: "whole nuts – choking hazard below five years.",
  egg: "raw egg yolk – cook to 71 °C or open the pasteurised carton.",
};

/** The calculation of one pot down a card; gives its cells. */
function card(
  sheet: CorpusSheet,
  { solute, grams, waterGrams }: Problem,
  left: number,
  constant: Spot,
) {
  let row = 5;
  const line = (label: string, content: string | number, unit = "", format?: string): Spot => {
    const value = format === undefined ? content : shown(content, format);
    const cells = [label, value, ...(unit === "" ? [] : [unit])];
    return putRow(sheet, row++, left, cells)[1]!;
  };
  const name = line("into the pot", solute.en);
  const mass = line("of that", grams, "g");
  const molar = line("M", solute.molarMass, "g/mol", "0.00");
  const particles = line("i", solute.particles);
  const water = line("pot water", waterGrams, "g");
  const moles = line("n = m / M", `=${a1(mass)}/${a1(molar)}`, "mol", "0.0000");
  const molal = line("b = n / kg water", `=${a1(moles)}/(${a1(water)}/1000)`, "mol/kg", "0.000");
  const law = `=${a1(particles)}*${fixed(constant)}*${a1(molal)}`;
  const depression = line("ΔT = i · Kf · b", law, "K", "0.00");
  const freezingPoint = line("slush from", `=-${a1(depression)}`, "°C", "0.00");
  const read = freezesAt(["water", solute.en], [waterGrams, grams]);
  line("probe read", read, "°C", "0.0");
  return { name, mass, molar, particles, water, moles, depression, freezingPoint };
}

/** Three pots, a card each, and the readings that go with them. */
function pots(kit: Kit, sheet: CorpusSheet): void {
  const { list, tolerance } = problems(kit, 3);
  put(sheet, 0, 0, "New starters, morning: why a sweet mix does not set like water");
  const [, constant] = putRow(sheet, 2, 0, ["Kf (water)", shown(1.86, "0.00"), "K·kg/mol"]);
  const text = `Treated as ideal and dilute: expect the probe within ${tolerance} K of the sum.`;
  const proviso = put(sheet, 17, 0, text);
  list.forEach((problem, index) => {
    const left = 4 * index;
    put(sheet, 4, left, `POT ${index + 1}`);
    const cells = card(sheet, problem, left, constant!);
    const { name, mass, molar, particles, water, moles, depression, freezingPoint } = cells;
    kit.marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [moles], water, constant: constant!, depression, freezingPoint, proviso },
    });
  });
  note(kit, sheet, 18, 0, "Stir the pots all the time or the probe reads the wall.");
}

const SYRUPS = [
  ["thin", 40, 60],
  ["bench", 80, 100],
  ["fruit", 120, 150],
] as const;

/** The syrups of the shelf, strength given both ways. */
function shelf(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 21, 0, "Syrups on the shelf");
  const heads = putRow(sheet, 22, 0, [
    ...["Bottle", "Sucrose (g)", "Water (g)", "Sucrose per 100 g water (g)"],
    ...["Sucrose, % of the syrup", "Freezes from (°C)"],
  ]);
  const rows = SYRUPS.map(([bottle, from, to], index) => {
    const water = random.pick([500, 800, 1000]);
    const sugar = (random.whole(from / 5, to / 5) * 5 * water) / 100;
    const strengths = [(100 * sugar) / water, (100 * sugar) / (sugar + water)];
    const typed = strengths.map((each) => shown(Number(each.toFixed(1)), "0.0"));
    const point = shown(freezesAt(["sucrose", "water"], [sugar, water]), "0.0");
    return putRow(sheet, 23 + index, 0, [bottle, sugar, water, ...typed, point]);
  });
  for (const [, sugar, water, perWater, share] of rows) {
    marked.strengths.push({ sugar: sugar!, water: water!, perWater: perWater!, share: share! });
  }
  temperatures(kit, heads[5]!, columnOf(rows, 5));
}

const SAID: readonly Said[] = [
  { label: "mix slushes from", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "that is below water by", inCell: "K", states: "depression", as: "typed" },
  { label: "water in the pan, all told", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "solids gone into solution", inCell: "g", states: "dissolved", as: "formula" },
];

/** What is churned after lunch. */
function churned(kit: Kit): void {
  const made = called(kit.make(1)[0]!, { sugar: "table sugar", "egg yolk": "egg yolks" });
  const sheet = addSheet(kit.marked.book, "Afternoon");
  put(sheet, 0, 0, `New starters, afternoon: ${made.title.toLowerCase()} on the small churn`);
  const list = listed(
    sheet,
    made,
    { row: 3, column: 1 },
    {
      heads: ["In the pan", "How much", undefined, "Who fetches it"],
      cells: (item, grams) => [item, grams, "g", kit.random.pick(["store", "cold room", "bench"])],
    },
  );
  const { names, amounts, heads, end } = list;
  put(sheet, end, 1, "on the scale at the end");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  put(sheet, end, 3, "g");
  const unitCells = columnOf(list.rows, 2);
  const cells = { names, amounts, unitCells, total, amountLabel: heads[1]!, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: 3, column: 6 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "we are after" });
  tellIn(sheet, recipe, { row: end + 2, column: 1 }, VOICE);
  note(kit, sheet, end + 3, 1, "Hand in your pot sums before the tasting.");
}

/** The first day in a workshop: sums in the morning, ice in the afternoon. */
function trainingDay(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Morning");
  pots(kit, sheet);
  shelf(kit, sheet);
  churned(kit);
}

/** A workshop that trains its starters. */
export const trainingDays: readonly Layout[] = [
  { name: "new starters, three pots and a small churn", language: "en", build: trainingDay },
];
