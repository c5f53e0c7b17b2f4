import { a1, addSheet, fixed, put, putRow, shown, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Said } from "../layouts/parts";
import { columnOf } from "../kitchens/hand";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { desk, down, linesOn } from "./desk";

interface Bowl {
  readonly solute: Dissolved;
  readonly grams: number;
  readonly waterGrams: number;
  readonly column: number;
}

const TASKS = [
  ...["Stirred in", "How much of it", "One mole weighs", "Water in the bowl"],
  ...["Moles of it", "Moles to a kilogram of water", "Pieces from each unit"],
  ...["Moles of pieces to a kilogram", "So it freezes lower by", "and begins to freeze at"],
];
const UNITS = [
  ...[undefined, "g", "g/mol", "g", "mol", "mol/kg", undefined],
  ...["mol/kg", "K", "°C"],
];

/** One bowl down its column, step by step. */
function bowl(kit: Kit, given: Bowl, constant: Spot, proviso: Spot): void {
  const sheet = kit.marked.book.sheets[0]!;
  const { solute, grams, waterGrams, column } = given;
  const at = (step: number, content: string | number, format?: string): Spot =>
    put(sheet, 4 + step, column, format === undefined ? content : shown(content, format));
  const [name, mass, molar] = [
    at(0, solute.en),
    at(1, grams),
    at(2, solute.molarMass, "0.00"),
  ] as const;
  const water = at(3, waterGrams);
  const moles = at(4, `=${a1(mass)}/${a1(molar)}`, "0.0000");
  const molality = at(5, `=${a1(moles)}/(${a1(water)}/1000)`, "0.000");
  const particles = at(6, solute.particles);
  const pieces = at(7, `=${a1(molality)}*${a1(particles)}`, "0.000");
  const depression = at(8, `=${a1(pieces)}*${fixed(constant)}`, "0.00");
  const freezingPoint = at(9, `=0-${a1(depression)}`, "0.00");
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [pieces], water, constant, depression, freezingPoint, proviso },
  });
}

/** Three bowls beside each other, sugar, salt and one more. */
function bowls(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Freezing, why");
  put(sheet, 0, 0, "Cookery school, evening 4: why salt works harder than sugar");
  const constant = putRow(sheet, 1, 0, ["Kf for water", "K·kg/mol", shown(1.86, "0.00")])[2]!;
  const waterGrams = random.pick([300, 500, 600]);
  const [sucrose, sodiumChloride, ...others] = dissolved;
  const three = [sucrose!, sodiumChloride!, ...choose(random, 1, others)];
  putRow(sheet, 3, 0, ["Step", "Unit", "Bowl A", "Bowl B", "Bowl C"]);
  TASKS.forEach((task, index) => putRow(sheet, 4 + index, 0, [task, UNITS[index]]));
  const grams = three.map((solute) => gramsOf(random, solute, waterGrams));
  const gaps = three.map((solute, index) => idealGap([solute], [grams[index]!], waterGrams));
  const words = `Thin solutions only: the ideal law is right to ${tolerated(Math.max(...gaps))} K here.`;
  const proviso = put(sheet, 15, 0, words);
  three.forEach((solute, index) => {
    const given = { solute, grams: grams[index]!, waterGrams, column: 2 + index };
    bowl(kit, given, constant, proviso);
  });
  note(kit, sheet, 16, 0, "Bowls A and B side by side on the front table.");
}

const KNOWN: readonly Said[] = [
  { label: "Freezes from (°C)", states: "freezing point", as: "formula" },
  { label: "Lower than water by (K)", states: "depression", as: "typed", decimals: 1 },
  { label: "Solids that dissolve (g)", states: "dissolved", as: "formula", format: "0" },
  {
    label: "Share of the mix that is ice at −15 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** The evening's recipe, for a bench and for the room. */
function bench(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "At the bench");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 1, made.title);
  const benches = putRow(sheet, 1, 1, ["Benches tonight", random.whole(5, 8)])[1]!;
  const list = desk(kit, sheet, made, {
    ...{ row: 3, column: 1 },
    heads: ["A bench weighs out", "Mass in g", "Trolley, mass in g", "Who"],
    cells: (index) => [made.names[index], made.grams[index]],
    ...{ name: 0, amount: 1, sum: "Mass of all" },
  });
  const { heads, amounts, end } = list;
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[2]!, end, format: "0", fixed: [benches] },
    formula: (cell) => `=${fixed(benches)}*${cell}`,
  });
  const recipe = markRecipe(kit, made, { ...linesOn(list), alsoAmounts, unit: "g" });
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, KNOWN);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "The school serves it" });
  tell(kit, sheet, recipe, { row: next + 2, column: 1, as: "pair" });
}

const JARS = ["for washing fruit", "for sorbet", "for brushing cake", "for candied peel"];

/** The jars of syrup on the trolley. */
function trolley({ marked, random }: Kit): void {
  const sheet = addSheet(marked.book, "Syrup jars");
  const heads = putRow(sheet, 0, 0, [
    ...["Water (g)", "Sugar (g)", "Jar", "% sugar in the jar", "g sugar on 100 g water"],
  ]);
  const rows = JARS.map((jar, index) => {
    const weighed = [20 * random.whole(12, 20), 60 * (index + 1) + 10 * random.whole(2, 6), jar];
    const [water, sugar] = putRow(sheet, 1 + index, 0, weighed) as [Spot, Spot];
    const at = (column: number, below: string): Spot =>
      put(sheet, 1 + index, column, shown(`=100*${a1(sugar)}/${below}`, "0.0"));
    const share = at(3, `(${a1(water)}+${a1(sugar)})`);
    const perWater = at(4, a1(water));
    marked.strengths.push({ sugar, water, perWater, share });
    return [share, perWater];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

function evening(kit: Kit): void {
  bowls(kit);
  bench(kit);
  trolley(kit);
}

/** Sheets of a cookery school. */
export const cookery: readonly Layout[] = [
  { name: "cookery school, three bowls and the bench", language: "en", build: evening },
];
