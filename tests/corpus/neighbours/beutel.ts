import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { columnOf, perKilogram } from "../kitchens/hand";
import { freezesAt, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { dissolved, idealGap, tolerated } from "../solution";
import { hasAlcohol } from "../strangers/etikett";
import { beside, lines, under } from "../strangers/zeilen";
import { alcoholIn } from "../visitors/lines";

const SALT = dissolved[1]!;

const HEADS = [
  ...["Beutel", "Eis, schon geschmolzen (g)", "Kochsalz (g)", "Salz auf 100 g Wasser (g)"],
  ...["Ionen je Formeleinheit", "Stoffmenge Salz (mol)", "Erniedrigung ΔT (K)"],
  ...["kälter als das wird es nicht (°C)", "nach 5 Minuten (°C)"],
];

type Board = Readonly<Record<"name" | "molar" | "constant" | "proviso", Spot>>;

interface Bag {
  readonly waterGrams: number;
  readonly grams: number;
}

/** One bag in its row; gives the cells with formulas, then what was measured. */
function bag(kit: Kit, sheet: CorpusSheet, row: number, given: Bag, board: Board): Spot[] {
  const { waterGrams, grams } = given;
  const { name, molar, constant, proviso } = board;
  const cells = putRow(sheet, row, 0, ["ABCDE"[row - 9], waterGrams, grams]);
  const [, water, mass] = cells as [Spot, Spot, Spot];
  const ratio = put(sheet, row, 3, shown(`=100*${a1(mass)}/${a1(water)}`, "0.0"));
  const particles = put(sheet, row, 4, SALT.particles);
  const amount = put(sheet, row, 5, shown(`=${a1(mass)}/${fixed(molar)}`, "0.000"));
  const molal = `${a1(amount)}/(${a1(water)}/1000)`;
  const law = `=${fixed(constant)}*${a1(particles)}*${molal}`;
  const depression = put(sheet, row, 6, shown(law, "0.0"));
  const freezingPoint = put(sheet, row, 7, shown(`=-${a1(depression)}`, "0.0"));
  const real = freezesAt(["water", SALT.en], [waterGrams, grams]);
  const read = put(sheet, row, 8, shown(Math.round(2 * real) / 2 + 1, "0.0"));
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [amount], water, constant, depression, freezingPoint, proviso },
  });
  return [ratio, amount, depression, freezingPoint, read];
}

/** Bags of water with more and more salt, and how near the ideal law comes to all of them. */
function bagsOf({ random }: Kit): { readonly bags: readonly Bag[]; readonly gap: string } {
  const bags = [3, 5, 8, 11, 13].map((perHundred) => {
    const waterGrams = 50 * random.whole(4, 10);
    return { waterGrams, grams: Math.round((perHundred * waterGrams) / 100) };
  });
  const gaps = bags.map(({ grams, waterGrams }) => idealGap([SALT], [grams], waterGrams));
  return { bags, gap: tolerated(Math.max(...gaps)).replace(".", ",") };
}

/** The given values above, the bags below, all by hand. */
function mixture(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Kältemischung");
  put(sheet, 0, 0, "Eis und Salz: Wie kalt wird es im Beutel?");
  const given = [
    ["Salz", SALT.de],
    ["M (g/mol)", shown(SALT.molarMass, "0.00")],
    ["Kf von Wasser (K·kg/mol)", shown(1.86, "0.00")],
  ].map((contents, index) => putRow(sheet, 2 + index, 0, contents)[1]!);
  const [name, molar, constant] = given as [Spot, Spot, Spot];
  const { bags, gap } = bagsOf(kit);
  const text = `Ideal gerechnet. Bei so viel Salz kann das um ${gap} K danebenliegen.`;
  const proviso = put(sheet, 6, 0, text);
  const heads = putRow(sheet, 8, 0, HEADS);
  const board = { name, molar, constant, proviso };
  const rows = bags.map((each, index) => bag(kit, sheet, 9 + index, each, board));
  [[], [molar], [constant], []].forEach((fixedCells, at) => {
    const heading = heads[at === 0 ? 3 : 4 + at]!;
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading, fixed: fixedCells });
  });
  const spots = columnOf(rows, 4);
  marked.numberColumns.push({ spots, heading: heads[8]!, total: null, kind: "temperature" });
  note(kit, sheet, 15, 0, "Handschuhe tragen. Die Salzlösung wird nicht gegessen.");
}

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierpunkt der Eismasse (°C)", states: "freezing point", as: "formula" },
  { label: "Gefrierpunktserniedrigung (K)", states: "depression", as: "typed" },
  { label: "Wasser in 1 kg Masse (g)", states: "water", as: "formula", format: "0" },
  { label: "Gelöstes in 1 kg Masse (g)", states: "dissolved", as: "typed", decimals: 0 },
  ...alcoholIn(made, {
    ...{ label: "Alkohol in 1 kg Masse (g)", states: "alcohol", as: "typed", decimals: 1 },
  }),
];

/** The ice at the temperature that the bag reaches. */
const inTheBag = (temperature: Spot, temperatureC: number): Said => ({
  ...{ label: "Anteil des Wassers, der im Beutel gefriert (%)", states: "ice of water" },
  ...{ as: "formula", format: "0.0", temperature, temperatureC },
});

/** A kilogram of the mix, and what a bag and the class take of it. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const words = { label: "In einen Beutel (g)", bare: "In einen Beutel", value: 150 };
  const one = input(kit, sheet, { row: 2, column: 0 }, words);
  const [, count] = putRow(sheet, 3, 0, ["Zahl der Beutel", kit.random.whole(8, 15)]);
  const heads = putRow(sheet, 6, 0, [
    ...["Zutat", "1 kg Masse (g)", "ein Beutel (g)", "alle Beutel (g)"],
  ]);
  const cells = lines(sheet, { row: 7, column: 0 }, made, (name, grams) => [name, grams]);
  const [names, amounts] = cells as [Spot[], Spot[]];
  const bagful = (cell: string) => `=${cell}*${fixed(one)}/1000`;
  const plan = { heading: heads[2]!, formula: bagful, fixed: [one], format: "0.0" };
  const bags = beside(kit, amounts, plan);
  const formula = (cell: string) => `=${cell}*${fixed(count!)}`;
  const all = beside(kit, bags, { heading: heads[3]!, formula, fixed: [count!], format: "0" });
  const total = under(kit, amounts);
  put(sheet, total.row, 0, "Summe");
  [bags, all].forEach((parts, at) =>
    sumOf(kit, sheet, { row: total.row, column: 2 + at }, parts, "0"),
  );
  const alsoAmounts = [...bags, ...all];
  const amountLabel = heads[1]!;
  return markRecipe(kit, made, { names, amounts, alsoAmounts, unit: "g", amountLabel, total });
}

/** A recipe without alcohol, as a school takes one; the one with a mistake in it where there is one. */
function forPupils(kit: Kit): MadeRecipe {
  const list = kit.make(4);
  const sober = list.find((made) => !hasAlcohol(made));
  return list.find(({ seeded }) => seeded !== undefined) ?? sober ?? list[0]!;
}

/** The freezing mixture, and the ice that the class makes in it. */
export function iceInABag(kit: Kit): void {
  mixture(kit);
  const sheet = addSheet(kit.marked.book, "Eis im Beutel");
  const made = perKilogram(forPupils(kit));
  put(sheet, 0, 0, `${made.title} im Beutel`);
  const value = -kit.random.whole(6, 9);
  const words = { label: "Kälte im Beutel (°C)", bare: "Kälte im Beutel", value };
  const temperature = input(kit, sheet, { row: 4, column: 0 }, words);
  const recipe = mix(kit, sheet, made);
  const place = { row: recipe.total!.row + 2, column: 0 };
  let next = say(sheet, recipe, place, [...said(made), inTheBag(temperature, value)]);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "Aus dem Gefrierfach wird es" });
  next = tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "sentence" });
  note(kit, sheet, next, 0, "Zwei Beutel übereinander, der innere gut verschlossen.");
}
