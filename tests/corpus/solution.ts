import { a1, fixed, put, putRow, shown, span, type CorpusSheet, type Spot } from "./book";
import type { Kit } from "./kit";
import { trueValue } from "./marks";
import type { Chance } from "./random";
import type { Language } from "./stock";

export interface Dissolved {
  readonly en: string;
  readonly de: string;
  readonly molarMass: number;
  readonly particles: number;
  /** Grams for each kg of water, weak enough for the ideal law. */
  readonly gramsPerKg: readonly [from: number, to: number];
}

const solute = (
  en: string,
  de: string,
  molarMass: number,
  particles: number,
  gramsPerKg: readonly [number, number],
): Dissolved => ({ ...{ en, de, molarMass }, particles, gramsPerKg });

/** Molar masses by the IUPAC standard atomic weights. */
export const dissolved: readonly Dissolved[] = [
  solute("sucrose", "Saccharose", 342.3, 1, [60, 140]),
  solute("sodium chloride", "Natriumchlorid", 58.44, 2, [6, 15]),
  solute("fructose", "Fruktose", 180.16, 1, [30, 70]),
  solute("glucose monohydrate", "Dextrose-Monohydrat", 198.17, 1, [30, 70]),
  solute("potassium chloride", "Kaliumchlorid", 74.55, 2, [6, 15]),
  solute("sodium bicarbonate", "Natriumhydrogencarbonat", 84.01, 2, [6, 15]),
];

export function choose(random: Chance, count: number, from = dissolved): Dissolved[] {
  const left = [...from];
  return Array.from({ length: count }, () => left.splice(random.whole(0, left.length - 1), 1)[0]!);
}

export const gramsOf = (random: Chance, { gramsPerKg: [from, to] }: Dissolved, water: number) =>
  Math.max(1, Math.round((random.between(from, to) * water) / 1000));

/** By how many kelvin the ideal law is off. */
export function idealGap(solutes: readonly Dissolved[], grams: readonly number[], water: number) {
  const moles = solutes.map((each, index) => (each.particles * grams[index]!) / each.molarMass);
  const ideal = (1.86 * moles.reduce((sum, mole) => sum + mole, 0) * 1000) / water;
  const made = { names: ["water", ...solutes.map(({ en }) => en)], grams: [water, ...grams] };
  return Math.abs(ideal - (trueValue(made, "depression", null) ?? ideal));
}

/** Rounded up to a tenth, and a tenth more. */
export const tolerated = (gap: number): string => (Math.ceil(gap * 10) / 10 + 0.1).toFixed(1);

export interface SolutionPlan {
  readonly top: number;
  readonly left: number;
  readonly count: number;
  readonly from?: readonly Dissolved[];
  /** Solute, grams, molar mass, particles, moles. */
  readonly headings: readonly [string, string, string, string, string];
  readonly words: {
    readonly water: readonly [label: string, bare: string];
    readonly constant: string;
    readonly depression: string;
    readonly freezingPoint: string | null;
    /** Says how near the ideal law comes here; gets the tolerance in K. */
    readonly proviso: (tolerance: string) => string;
  };
  /** Water and constant above the lines instead of below. */
  readonly inputsFirst?: boolean;
}

const decimal = (language: Language, text: string) =>
  language === "de" ? text.replace(".", ",") : text;

/** A class calculation: solutes with their molar masses and particles, then i·Kf·m in cells. */
export function solution(kit: Kit, sheet: CorpusSheet, plan: SolutionPlan): void {
  const { left, headings, words } = plan;
  const { random, language, marked } = kit;
  const solutes = choose(random, plan.count, plan.from);
  const waterGrams = random.pick([200, 250, 500, 1000]);
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams));
  let row = plan.top;
  const labelled = (label: string, content: string | number, format?: string): Spot => {
    put(sheet, row, left, label);
    return put(sheet, row++, left + 1, format === undefined ? content : shown(content, format));
  };
  const inputs = () => [
    labelled(words.water[0], waterGrams),
    labelled(words.constant, 1.86, "0.00"),
  ];
  const before = plan.inputsFirst === true ? inputs() : [];
  if (before.length > 0) row += 1;
  const heads = putRow(sheet, row++, left, headings);
  const lines = solutes.map((each, index) => {
    const [name, mass, molar, particles] = putRow(sheet, row, left, [
      ...[each[language], grams[index]!, shown(each.molarMass, "0.00"), each.particles],
    ]) as [Spot, Spot, Spot, Spot];
    const moles = `=${a1(mass)}/${a1(molar)}*${a1(particles)}`;
    return {
      name,
      mass,
      molar,
      particles,
      moles: put(sheet, row++, left + 4, shown(moles, "0.0000")),
    };
  });
  row += 1;
  const [water, constant] = (before.length > 0 ? before : inputs()) as [Spot, Spot];
  const moles = lines.map((line) => line.moles);
  const law = `=${fixed(constant)}*SUM(${span(moles)})/(${a1(water)}/1000)`;
  const depression = labelled(words.depression, law, "0.00");
  const freezingPoint =
    words.freezingPoint === null
      ? null
      : labelled(words.freezingPoint, `=-${a1(depression)}`, "0.00");
  const gap = tolerated(idealGap(solutes, grams, waterGrams));
  const proviso = put(sheet, row + 1, left, words.proviso(decimal(language, gap)));
  marked.solutions.push({
    ...{ names: lines.map(({ name }) => name), grams: lines.map(({ mass }) => mass), moles },
    molarMasses: lines.map(({ molar }) => molar),
    particles: lines.map(({ particles }) => particles),
    ...{ water, constant, depression, freezingPoint, proviso },
  });
  marked.formulaColumns.push({ spots: moles, heading: heads[4]!, fixed: [] });
  const label = { ...water, column: left };
  marked.inputs.push({ label, value: water, bare: words.water[1] });
}
