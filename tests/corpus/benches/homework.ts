import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { absolute, type Said } from "../layouts/parts";
import { choose, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { about, mix, solutes } from "./words";

const VOICE: Voice = {
  lead: "Allergen statement:",
  honey: "Contains honey, unsuitable for infants below 12 months.",
  alcohol: "Contains alcohol; not for minors, in pregnancy or before driving.",
  nuts: "Whole nuts are a choking hazard below 5 years.",
  egg: "Contains raw egg yolk, to be heated to 71 °C or bought pasteurised.",
};

interface Given {
  readonly name: Spot;
  readonly mass: Spot;
  readonly molar: Spot;
  readonly particles: Spot;
}

/** What the question gives of one solute, symbol and unit beside each number. */
function given(sheet: CorpusSheet, row: number, of: Dissolved, grams: number, at: number): Given {
  const letter = "ABC"[at]!;
  const line = (down: number, symbol: string, content: string | number, unit?: string): Spot =>
    putRow(sheet, row + down, 0, [
      `${symbol}${letter}`,
      typeof content === "number" && down === 2 ? shown(content, "0.00") : content,
      ...(unit === undefined ? [] : [unit]),
    ])[1]!;
  return {
    name: line(0, "solute ", of.en),
    mass: line(1, "mass of ", grams, "g"),
    molar: line(2, "molar mass of ", of.molarMass, "g/mol"),
    particles: line(3, "van 't Hoff factor of ", of.particles),
  };
}

interface Answers {
  readonly moles: readonly Spot[];
  readonly depression: Spot;
  readonly freezingPoint: Spot;
}

/** The worked answer, in the columns right of what is given. */
function worked(
  kit: Kit,
  sheet: CorpusSheet,
  list: readonly Given[],
  known: readonly [water: Spot, constant: Spot],
): Answers {
  const [water, constant] = known;
  const heading = put(sheet, 3, 5, "moles of particles");
  const moles = list.map(({ mass, molar, particles }, index) => {
    put(sheet, 4 + index, 4, `from ${"ABC"[index]}`);
    const content = `=${a1(mass)}/${a1(molar)}*${a1(particles)}`;
    return putRow(sheet, 4 + index, 5, [shown(content, "0.0000"), "mol"])[0]!;
  });
  kit.marked.formulaColumns.push({ spots: moles, heading, fixed: [] });
  const line = (row: number, label: string, content: string, unit: string): Spot =>
    putRow(sheet, row, 4, [label, shown(content, "0.000"), unit])[1]!;
  const kilos = line(8, "water", `=${a1(water)}/1000`, "kg");
  const molality = line(9, "all particles, molal", `=SUM(${span(moles)})/${a1(kilos)}`, "mol/kg");
  const depression = line(10, "depression", `=${a1(constant)}*${a1(molality)}`, "K");
  return { moles, depression, freezingPoint: line(11, "freezes at", `=-${a1(depression)}`, "°C") };
}

/** Question 3: three things in one beaker of water. */
function question(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Q3");
  put(sheet, 0, 0, "Homework set 5, question 3 (9 marks), due Thursday");
  put(sheet, 2, 0, "Given");
  put(sheet, 2, 4, "Model answer (hide before uploading)");
  const waterGrams = random.pick([250, 400, 500]);
  const [, constant] = putRow(sheet, 4, 0, ["K_f of water", shown(1.86, "0.00"), "K kg/mol"]);
  const [label, water] = putRow(sheet, 3, 0, ["mass of water (g)", waterGrams]);
  marked.inputs.push({ label: label!, value: water!, bare: "mass of water" });
  const chosen = [...choose(random, 2, solutes("sucrose", "fructose", "glucose monohydrate"))];
  const all = [...chosen, ...choose(random, 1, solutes("sodium chloride", "potassium chloride"))];
  const grams = all.map((each) => gramsOf(random, each, waterGrams));
  const list = all.map((each, index) => given(sheet, 6 + 5 * index, each, grams[index]!, index));
  const { moles, ...answers } = worked(kit, sheet, list, [water!, constant!]);
  const gap = tolerated(idealGap(all, grams, waterGrams));
  const text = `Accept ${gap} K either way: the ideal law comes that near to this solution.`;
  const proviso = put(sheet, 13, 4, text);
  note(kit, sheet, 15, 4, "Half marks for forgetting that the salt falls into two ions.");
  marked.solutions.push({
    ...{ names: list.map(({ name }) => name), grams: list.map(({ mass }) => mass), moles },
    molarMasses: list.map(({ molar }) => molar),
    particles: list.map(({ particles }) => particles),
    ...{ water: water!, constant: constant!, proviso, ...answers },
  });
}

const SAID: readonly Said[] = [
  { label: "initial freezing point, °C", states: "freezing point", as: "formula" },
  { label: "depression, K", states: "depression", as: "typed" },
  {
    ...{ label: "ice in the product at −15 °C, % of the whole", decimals: 0 },
    ...{ states: "ice of mix", as: "typed", temperatureC: -15 },
  },
  { label: "water in a kilo of mix, g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "sugars, g to 100 g of water", decimals: 1 },
    ...{ states: "sugar per 100 g water", as: "typed" },
  },
];

/** Question 4: a real mix, and why the law is no longer enough. */
function reality(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Q4");
  const made = called(perKilogram(kit.make(1)[0]!), { water: "tap water" });
  put(sheet, 0, 0, `Question 4: ${made.title.toLowerCase()}, which we freeze on the 14th`);
  const heads = ["g", "of", "% by mass"];
  put(sheet, 2, 1, "The mix");
  const plan = { row: 3, column: 1, heads, amount: 0, name: 1, total: "together" } as const;
  const { recipe, end } = mix(
    kit,
    sheet,
    made,
    { ...plan, cells: (item, grams) => [grams, item] },
    (rows, total) => {
      const shares = columnOf(rows, 0).map((spot) => {
        const content = `=100*${a1(spot)}/${absolute(a1(total!))}`;
        return put(sheet, spot.row, 3, shown(content, "0.0"));
      });
      const heading = { sheet: sheet.name, row: 3, column: 3 };
      kit.marked.formulaColumns.push({ spots: shares, heading, fixed: [total!] });
      const sum = put(sheet, total!.row, 3, shown(`=SUM(${span(shares)})`, "0.0"));
      kit.marked.sums.push({ spot: sum, parts: shares });
      return shares;
    },
  );
  const telling = { said: SAID, target: "intended use", voice: VOICE };
  const next = about(sheet, recipe, { row: end + 1, column: 1 }, telling);
  note(kit, sheet, next + 1, 1, "Discuss: which of these numbers would question 3's method miss?");
}

/** Sheets of somebody who sets homework in a first year at university. */
export const homework: readonly Layout[] = [
  {
    ...{ name: "homework set 5, three solutes on one page", language: "en" },
    build: (kit) => {
      question(kit);
      reality(kit);
    },
  },
];
