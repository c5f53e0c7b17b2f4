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
import type { MarkedSolution } from "../marks";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";
import { pair } from "./words";

const HEADS = [
  "Stirred in",
  "Pieces it falls into",
  "One mole weighs (g)",
  "We weighed (g)",
  "Moles of pieces",
];

interface Cup {
  readonly solutes: readonly Dissolved[];
  readonly grams: readonly number[];
  readonly waterGrams: number;
}

/** One line of a cup: what was stirred in, and the moles it makes. */
function stirred(sheet: CorpusSheet, row: number, solute: Dissolved, weighed: number): Spot[] {
  const cells = putRow(sheet, row, 0, [
    ...[solute.en, solute.particles, shown(solute.molarMass, "0.00"), weighed],
  ]) as [Spot, Spot, Spot, Spot];
  const [, pieces, molar, mass] = cells;
  const content = `=${a1(mass)}*${a1(pieces)}/${a1(molar)}`;
  return [...cells, put(sheet, row, 4, shown(content, "0.0000"))];
}

/** One cup with its working under it. */
function cup(
  kit: Kit,
  sheet: CorpusSheet,
  top: number,
  { solutes, grams, waterGrams }: Cup,
  shared: { readonly constant: Spot; readonly proviso: Spot },
): void {
  const heads = putRow(sheet, top, 0, HEADS);
  const rows = solutes.map((each, index) => stirred(sheet, top + 1 + index, each, grams[index]!));
  const at = (column: number): Spot[] => columnOf(rows, column);
  const row = top + 1 + rows.length;
  const water = pair(sheet, row, 0, "Water in the cup (g)", waterGrams);
  const added = rows.length > 1 ? `=SUM(${span(at(4))})` : `=${a1(at(4)[0]!)}`;
  const all = pair(sheet, row + 1, 0, "All pieces (mol)", shown(added, "0.0000"));
  const law = `=${a1(all)}/${a1(water)}*1000*${fixed(shared.constant)}`;
  const depression = pair(sheet, row + 2, 0, "Freezes lower by (K)", shown(law, "0.00"));
  const lower = shown(`=-${a1(depression)}`, "0.00");
  const freezingPoint = pair(sheet, row + 3, 0, "So it freezes at (°C)", lower);
  if (rows.length > 1) kit.marked.sums.push({ spot: all, parts: at(4) });
  markCup(kit, rows, heads[4]!, { water, depression, freezingPoint, ...shared });
}

type Worked = Pick<
  MarkedSolution,
  "water" | "depression" | "freezingPoint" | "constant" | "proviso"
>;

function markCup(
  { marked }: Kit,
  rows: readonly (readonly Spot[])[],
  heading: Spot,
  worked: Worked,
): void {
  const [names, particles, molarMasses, grams, moles] = [0, 1, 2, 3, 4].map((column) =>
    columnOf(rows, column),
  ) as [Spot[], Spot[], Spot[], Spot[], Spot[]];
  marked.solutions.push({ names, particles, molarMasses, grams, moles, ...worked });
  marked.formulaColumns.push({ spots: moles, heading, fixed: [] });
  const { water } = worked;
  const label = { ...water, column: 0 };
  marked.inputs.push({ label, value: water, bare: "Water in the cup" });
}

/** Cups for two children at the kitchen table, one under the other. */
function kitchenTable(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Kitchen table science");
  put(sheet, 0, 0, "Why does salty water need a colder freezer?");
  const constant = pair(sheet, 1, 0, "Kf for water (K·kg/mol)", shown(1.86, "0.00"));
  const [salt, ...others] = dissolved.filter(({ en }) => !en.startsWith("sucrose"));
  const kinds = [[salt!], choose(random, 2), [dissolved[0]!, ...choose(random, 1, others)]];
  const cups = kinds.map((solutes): Cup => {
    const waterGrams = random.pick([150, 200, 250]);
    const grams = solutes.map((each) => gramsOf(random, each, waterGrams));
    return { solutes, grams, waterGrams };
  });
  const gaps = cups.map((each) => idealGap(each.solutes, each.grams, each.waterGrams));
  const words = `This is the simple law. Our thermometer may differ by ${tolerated(Math.max(...gaps))} K.`;
  const proviso = put(sheet, 2, 0, words);
  let row = 4;
  for (const [index, each] of cups.entries()) {
    put(sheet, row, 0, `Cup ${["one", "two", "three"][index]}`);
    cup(kit, sheet, row + 1, each, { constant, proviso });
    row += each.solutes.length + 8;
  }
  note(kit, sheet, row, 0, "Draw the three cups and what the pieces do in them.");
}

/** Lessons at home. */
export const homeLessons: readonly Layout[] = [
  { name: "home lessons, three cups at the kitchen table", language: "en", build: kitchenTable },
];
