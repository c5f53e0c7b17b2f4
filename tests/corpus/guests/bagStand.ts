import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { columnOf, perKilogram } from "../kitchens/hand";
import { freezesAt, problems, say } from "../layouts/parts";
import { List } from "../list";
import { beside } from "../newcomers/words";
import { hasSpirit, oneOf } from "./words";

const JUG = {
  ...{ name: "In the jug", amount: "One jug (g)", scaled: "All day (g)" },
  allergen: "Ask parents about",
};

/** The jug that the bags are filled from, and what one bag gets. */
function jug(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Bags");
  const made = perKilogram(oneOf(kit, (each) => !hasSpirit(each)));
  put(sheet, 0, 0, `Ice cream in a bag: ${made.title.toLowerCase()}`);
  const [, factor] = putRow(sheet, 1, 0, ["Jugs for the day", kit.random.whole(3, 8)]);
  const { recipe, totalRow } = new List(kit, sheet, made, {
    ...{ top: 3, left: 0, columns: ["name", "amount", "scaled", "allergen"], unit: "g" },
    ...{ headings: JUG, total: "Altogether", factor: factor! },
  });
  let row = say(sheet, recipe, { row: totalRow + 2, column: 0 }, [
    { label: "Mix begins to freeze at (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "which is below plain water by (K)", states: "depression", as: "formula" },
    { label: "Water in a jug, fruit and milk included (g)", states: "water", as: "formula" },
    {
      ...{ label: "Water frozen by the time the bag is at −8 °C (%)", states: "ice of water" },
      ...{ as: "typed", temperatureC: -8, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: row++, column: 0, label: "After a night in the freezer" });
  row = tell(kit, sheet, recipe, { row: row + 1, column: 0, as: "sentence" });
  note(kit, sheet, row + 1, 0, "Outer bag: six mugs of crushed ice, one mug of rock salt, gloves.");
}

const DRINKS = ["squash as drunk", "strong squash", "thin syrup", "sorbet syrup"];

/** Sugar in water, said in both ways, with where it begins to freeze. */
function sugarWater(kit: Kit, sheet: CorpusSheet, top: number): void {
  const { marked, random } = kit;
  put(sheet, top, 0, "B. Which bottle freezes last? (sucrose in water)");
  putRow(sheet, top + 1, 0, [
    ...["Bottle", "Water (g)", "Sucrose (g)", "g sucrose per 100 g water", "sucrose, % by mass"],
    "starts to freeze (°C)",
  ]);
  DRINKS.forEach((drink, index) => {
    const [waterGrams, sugarGrams] = [400, 40 + 65 * index + 4 * random.whole(0, 9)];
    const [, water, sugar, perWater, share] = putRow(sheet, top + 2 + index, 0, [
      ...[drink, waterGrams, sugarGrams, Number((sugarGrams / 4).toFixed(1))],
      Number(((100 * sugarGrams) / (sugarGrams + waterGrams)).toFixed(1)),
      shown(freezesAt(["sucrose", "water"], [sugarGrams, waterGrams]), "0.0"),
    ]) as [Spot, Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share });
  });
}

/** What each pot gives: the depression in one formula a row, and the freezing point. */
function answers(kit: Kit, sheet: CorpusSheet, rows: readonly Spot[][], constant: Spot) {
  const [drop, point] = putRow(sheet, 4, 5, ["ΔT (K)", "freezes at (°C)"]) as [Spot, Spot];
  const drops = beside(kit, drop, columnOf(rows, 0), {
    ...{ sheet, format: "0.00", fixed: [constant] },
    content: (_, index) => {
      const [, molar, count, water, mass] = rows[index]!.map(a1);
      return `=${count}*${fixed(constant)}*${mass}/${molar}/(${water}/1000)`;
    },
  });
  const points = beside(kit, point, drops, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=-${a1(spot)}`,
  });
  return { drops, points };
}

/** Van 't Hoff for four pots. */
function pots(kit: Kit, sheet: CorpusSheet): void {
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 2, 0, "A. Four pots, guess first: ΔT = i · Kf · b");
  const [, constant] = putRow(sheet, 3, 0, ["Kf (K·kg/mol)", shown(1.86, "0.00")]) as [Spot, Spot];
  putRow(sheet, 4, 0, ["Pot of", "M (g/mol)", "i", "water (g)", "stirred in (g)"]);
  const rows = list.map(({ solute, grams, waterGrams }, index) =>
    putRow(sheet, 5 + index, 0, [
      ...[solute.en, shown(solute.molarMass, "0.00"), solute.particles, waterGrams, grams],
    ]),
  );
  const { drops, points } = answers(kit, sheet, rows, constant);
  const words = `The formula is for dilute solutions; within ${tolerance} K it holds in all four.`;
  const proviso = put(sheet, 9, 0, words);
  rows.forEach(([name, molar, count, water, mass], index) =>
    kit.marked.solutions.push({
      ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [count!] },
      ...{ moles: [drops[index]!], water: water!, constant, proviso },
      ...{ depression: drops[index]!, freezingPoint: points[index]! },
    }),
  );
}

/** A stand at a science fair: the numbers for the board, the jug behind it. */
export function bagStand(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Board");
  put(sheet, 0, 0, "Stand 14: cold, colder, ice cream");
  pots(kit, sheet);
  sugarWater(kit, sheet, 11);
  const heads = putRow(sheet, 18, 0, ["C. Ice and rock salt", "in the bag (°C)"]);
  const read = ["at the start", "after 2 min", "after 5 min", "after 8 min", "after 12 min"].map(
    (when, index) => {
      const cold = -[0, 7, 12, 14.5, 15.5][index]! - (index > 0 ? kit.random.whole(0, 4) / 2 : 0);
      return putRow(sheet, 19 + index, 0, [when, shown(cold, "0.0")])[1]!;
    },
  );
  kit.marked.numberColumns.push({
    ...{ spots: read, heading: heads[1]!, total: null, kind: "temperature" },
  });
  note(kit, sheet, 25, 0, "Nobody touches the outer bag with bare hands.");
  jug(kit);
}
