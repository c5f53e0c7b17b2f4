import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { choose, gramsOf, idealGap, tolerated } from "../solution";
import { facts } from "./words";

const HEADS = ["M in g/mol", "What we stir in", "i", "m in g", "n in mol", "n·i in mol"];

/** What is stirred into the lolly water, a row each. */
function stirred(kit: Kit, sheet: CorpusSheet, waterGrams: number) {
  const { random, marked } = kit;
  const solutes = choose(random, 3);
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams * 0.6));
  const heads = putRow(sheet, 3, 0, HEADS);
  const rows = solutes.map(({ en, molarMass, particles }, index) => {
    const row = 4 + index;
    const cells = putRow(sheet, row, 0, [
      ...[shown(molarMass, "0.00"), en, particles, grams[index]],
    ]);
    const [molar, , each, mass] = cells.map(a1);
    const moles = put(sheet, row, 4, shown(`=${mass}/${molar}`, "0.0000"));
    const all = put(sheet, row, 5, shown(`=${a1(moles)}*${each}`, "0.0000"));
    return [...cells, moles, all];
  });
  [4, 5].forEach((column) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, column), heading: heads[column]!, fixed: [] },
    }),
  );
  return { solutes, grams, rows, gap: tolerated(idealGap(solutes, grams, waterGrams)) };
}

/** The law step by step, right of the table. */
function lolly(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  const waterGrams = random.pick([400, 600, 900]);
  const { rows, gap } = stirred(kit, sheet, waterGrams);
  const particles = columnOf(rows, 5);
  put(sheet, 3, 7, "Step by step");
  const [water, constant, sum] = facts(sheet, { row: 4, column: 7 }, [
    ["Water in the jug (g)", waterGrams],
    ["Kf for water", shown(1.86, "0.00"), "K kg/mol"],
    ["Particles together", shown(`=SUM(${span(particles)})`, "0.0000"), "mol"],
  ]) as [Spot, Spot, Spot];
  marked.sums.push({ spot: sum, parts: particles });
  const perKilo = `${a1(sum)}/(${a1(water)}/1000)`;
  const law = shown(`=${a1(constant)}*${perKilo}`, "0.00");
  const depression = putRow(sheet, 7, 7, ["ΔT = Kf · n·i / kg", law, "K"])[1]!;
  const below = shown(`=-1*${a1(depression)}`, "0.00");
  const freezingPoint = putRow(sheet, 8, 7, ["The lolly begins to freeze at", below, "°C"])[1]!;
  const proviso = put(sheet, 10, 7, `Ideal law, so believe it to ±${gap} K.`);
  const cells = (at: number) => columnOf(rows, at);
  marked.solutions.push({
    ...{ names: cells(1), grams: cells(3), molarMasses: cells(0), particles: cells(2) },
    ...{ counted: cells(4), moles: particles, water, constant, depression, freezingPoint, proviso },
  });
  marked.inputs.push({ label: { ...water, column: 7 }, value: water, bare: "Water in the jug" });
}

const CUPS = ["Cup 1", "Cup 2", "Cup 3", "Cup 4"];

/** Sugar in water, said in both ways. */
function twoWays(kit: Kit, sheet: CorpusSheet, top: number): void {
  const { random, marked } = kit;
  put(sheet, top, 0, "Two ways to say how sweet a cup is");
  const heads = putRow(sheet, top + 1, 0, [
    ...["Cup", "sucrose (g)", "water (g)", "% by mass", "g sugar per 100 g water"],
  ]);
  const rows = CUPS.map((cup, index) => {
    const row = top + 2 + index;
    const contents = [cup, 15 * random.whole(3 + 2 * index, 4 + 2 * index), 150];
    const [, sugar, water] = putRow(sheet, row, 0, contents) as [Spot, Spot, Spot];
    const both = `(${a1(water)}+${a1(sugar)})`;
    const share = put(sheet, row, 3, shown(`=${a1(sugar)}/${both}*100`, "0.0"));
    const perWater = put(sheet, row, 4, shown(`=${a1(sugar)}/${a1(water)}*100`, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [share, perWater];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

/** One lolly by the ideal law, then sugar in cups. */
function lollyLesson(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Lollies");
  put(sheet, 0, 0, "Food science club: at what temperature does our lolly begin to freeze?");
  lolly(kit, sheet);
  twoWays(kit, sheet, 12);
  note(kit, sheet, 19, 0, "Taste before freezing: cold things taste less sweet.");
}

/** Somebody who runs a food science club. */
export const lollyLessons: readonly Layout[] = [
  { name: "food science club, one lolly step by step", language: "en", build: lollyLesson },
];
