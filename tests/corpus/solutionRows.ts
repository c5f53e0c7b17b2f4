import { a1, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "./book";
import type { Kit } from "./kit";
import { choose, dissolved, gramsOf, idealGap, tolerated } from "./solution";

export interface SolutionRowsPlan {
  readonly top: number;
  readonly left: number;
  readonly constant: string;
  /** Solute, grams, water, molar mass, particles, molality, depression, freezing point. */
  readonly headings: readonly [string, string, string, string, string, string, string, string];
  readonly proviso: (tolerance: string) => string;
}

/** Solutions one a row, each with its molality, depression and freezing point by the ideal law. */
export function solutionRows(kit: Kit, sheet: CorpusSheet, plan: SolutionRowsPlan): void {
  const { top, left, headings } = plan;
  const { random, language, marked } = kit;
  const [, constant] = putRow(sheet, top, left, [plan.constant, shown(1.86, "0.00")]) as [
    Spot,
    Spot,
  ];
  const heads = putRow(sheet, top + 2, left, headings);
  const solutes = choose(random, 5, dissolved);
  const gaps: number[] = [];
  const lines = solutes.map((each, index) => {
    const row = top + 3 + index;
    const waterGrams = random.pick([100, 200, 250, 500]);
    const grams = gramsOf(random, each, waterGrams);
    gaps.push(idealGap([each], [grams], waterGrams));
    const [name, mass, water, molar, particles] = putRow(sheet, row, left, [
      ...[each[language], grams, waterGrams, shown(each.molarMass, "0.00"), each.particles],
    ]) as [Spot, Spot, Spot, Spot, Spot];
    const molality = put(
      sheet,
      row,
      left + 5,
      shown(`=${a1(mass)}/${a1(molar)}/${a1(water)}*1000`, "0.000"),
    );
    const law = `=${a1(particles)}*${fixed(constant)}*${a1(molality)}`;
    const depression = put(sheet, row, left + 6, shown(law, "0.00"));
    const freezingPoint = put(sheet, row, left + 7, shown(`=-${a1(depression)}`, "0.00"));
    return { name, mass, water, molar, particles, molality, depression, freezingPoint };
  });
  const gap = tolerated(Math.max(...gaps));
  const text = plan.proviso(language === "de" ? gap.replace(".", ",") : gap);
  const proviso = put(sheet, top + 4 + lines.length, left, text);
  for (const line of lines) {
    const { name, mass, molar, particles, molality, water, depression, freezingPoint } = line;
    marked.solutions.push({
      ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
      ...{ moles: [molality], water, constant, depression, freezingPoint, proviso },
    });
  }
  (["molality", "depression", "freezingPoint"] as const).forEach((key, index) => {
    const spots = lines.map((line) => line[key]);
    const reads = key === "depression" ? [constant] : [];
    marked.formulaColumns.push({ spots, heading: heads[5 + index]!, fixed: reads });
  });
}
