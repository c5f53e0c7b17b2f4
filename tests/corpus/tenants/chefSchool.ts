import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { input } from "../page";
import { choose, gramsOf, idealGap, tolerated } from "../solution";

const STEPS = [
  ...["In the bowl", "weighed, g", "one mole weighs, g", "particles it gives"],
  "moles of particles",
];

/** What is in the bowl, a column each. */
function across(kit: Kit, sheet: CorpusSheet, waterGrams: number) {
  const solutes = choose(kit.random, 4);
  const grams = solutes.map((each) => gramsOf(kit.random, each, waterGrams * 0.45));
  STEPS.forEach((step, index) => put(sheet, 5 + index, 0, step));
  const columns = solutes.map(({ en, molarMass, particles }, index) => {
    const given = [en, grams[index], shown(molarMass, "0.00"), particles];
    const cells = given.map((content, step) => put(sheet, 5 + step, 1 + index, content));
    const [, mass, molar, count] = cells.map(a1);
    const moles = shown(`=${mass}/${molar}*${count}`, "0.0000");
    return [...cells, put(sheet, 9, 1 + index, moles)];
  });
  return { columns, gap: tolerated(idealGap(solutes, grams, waterGrams)) };
}

/** From the moles to the freezing point, one step a row. */
function law(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  const waterGrams = random.pick([500, 750, 1000]);
  const words = { label: "Water in the bowl, g", bare: "Water in the bowl", value: waterGrams };
  const water = input(kit, sheet, { row: 2, column: 0 }, words);
  const constant = putRow(sheet, 3, 0, ["Kf, K per mol/kg", shown(1.86, "0.00")])[1]!;
  const { columns, gap } = across(kit, sheet, waterGrams);
  const cells = (at: number): Spot[] => columnOf(columns, at);
  const moles = cells(4);
  const all = put(sheet, 9, 6, shown(`=SUM(${span(moles)})`, "0.0000"));
  put(sheet, 8, 6, "all together");
  marked.sums.push({ spot: all, parts: moles });
  const drop = `=${fixed(constant)}*${a1(all)}*1000/${a1(water)}`;
  const depression = putRow(sheet, 11, 0, ["Freezing point drops by, K", shown(drop, "0.00")])[1]!;
  const below = shown(`=-${a1(depression)}`, "0.00");
  const freezingPoint = putRow(sheet, 12, 0, ["So it starts to freeze at, °C", below])[1]!;
  const text = `Textbook rule for weak solutions, here right to about ${gap} K.`;
  const proviso = put(sheet, 13, 0, text);
  marked.solutions.push({
    ...{ names: cells(0), grams: cells(1), molarMasses: cells(2), particles: cells(3), moles },
    ...{ water, constant, depression, freezingPoint, proviso },
  });
}

/** Syrups for the pastry room, said in both ways. */
function syrups({ random, marked }: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Stock syrups for the pastry room");
  const heads = putRow(sheet, 2, 0, [
    ...["Syrup", "water, g", "sucrose, g", "sucrose on 100 g water, g", "sucrose, % of the syrup"],
  ]);
  const rows = ["thin", "for sorbet", "for fruit", "for soaking", "thick"].map((syrup, index) => {
    const amounts = [500, 25 * random.whole(5 + 4 * index, 7 + 4 * index)];
    const [, water, sugar] = putRow(sheet, 3 + index, 0, [syrup, ...amounts]) as [Spot, Spot, Spot];
    const perWater = shown(`=100*${a1(sugar)}/${a1(water)}`, "0.0");
    const share = shown(`=100*${a1(sugar)}/(${a1(sugar)}+${a1(water)})`, "0.0");
    const [first, second] = putRow(sheet, 3 + index, 3, [perWater, share]) as [Spot, Spot];
    marked.strengths.push({ sugar, water, perWater: first, share: second });
    return [first, second];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

/** One bowl worked out before a class of cooks, then the syrups that they use. */
function chefSchool(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "One bowl");
  put(sheet, 0, 0, "Why a sorbet stays soft: one bowl, worked out together");
  law(kit, sheet);
  note(kit, sheet, 15, 0, "Draw the water molecules on the board first.");
  syrups(kit, addSheet(kit.marked.book, "Syrups"));
}

/** A school for cooks. */
export const chefSchools: readonly Layout[] = [
  { name: "chef school, one bowl with its solutes across", language: "en", build: chefSchool },
];
