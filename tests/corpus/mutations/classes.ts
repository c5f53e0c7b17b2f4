import { parseCellName } from "../../../src/workbook/address";
import { a1, fixed, retype, typedAt, type Spot } from "../book";
import type { MarkedBook, MarkedSolution } from "../marks";
import {
  numberAt,
  one,
  retypeNumber,
  textAt,
  WRONG_LAW,
  type Mutation,
  type Variant,
} from "../mutation";
import { dissolved, idealGap, type Dissolved } from "../solution";

const soluteAt = (marked: MarkedBook, spot: Spot): Dissolved | undefined =>
  dissolved.find(({ en, de }) => [en, de].includes(textAt(marked, spot)));

const answers = ({ depression, freezingPoint }: MarkedSolution): Spot[] =>
  freezingPoint === null ? [depression] : [depression, freezingPoint];

/** Puts so many grams into a cell; where they are weighed by difference, onto the scale with the vessel. */
function weigh(marked: MarkedBook, spot: Spot, grams: number): void {
  const content = typedAt(marked.book, spot)?.content;
  const [, gross, tare] = /^=([A-Z]+\d+)-([A-Z]+\d+)$/.exec(String(content)) ?? [];
  const at = (name: string): Spot => ({ ...spot, ...parseCellName(name)! });
  if (gross === undefined || tare === undefined) retype(marked.book, spot, grams);
  else retypeNumber(marked, at(gross), numberAt(marked, at(tare)) + grams, 2);
}

/** Solutes so strong that the ideal law is off by far more than the sheet allows. */
const tooStrong: Variant = {
  apply: (marked, random) => {
    const chosen = one(random, marked.solutions);
    if (chosen === null) return null;
    const stated = /(\d[.,]\d)/.exec(textAt(marked, chosen.proviso));
    const solutes = chosen.names.map((spot) => soluteAt(marked, spot)!);
    const water = numberAt(marked, chosen.water);
    const factor = random.between(6, 9);
    const grams = chosen.grams.map((spot) => Math.round(numberAt(marked, spot) * factor));
    const allowed = Number(stated![1]!.replace(",", "."));
    if (idealGap(solutes, grams, water) < 2 * allowed) return null;
    chosen.grams.forEach((spot, index) => weigh(marked, spot, grams[index]!));
    return answers(chosen);
  },
};

const WRONG_KF = [18.6, 3.35, 0.186, 5.12, 0.512];

const wrongConstant: Variant = {
  apply: (marked, random) => {
    const chosen = one(random, marked.solutions);
    if (chosen === null) return null;
    retype(marked.book, chosen.constant, random.pick(WRONG_KF));
    return [chosen.constant];
  },
};

/** A constant may stand on another sheet. */
const SHEET_PREFIX = String.raw`(?:'[^']+'|[\p{L}\p{N}_.]+)!`;

const constantInFormula: Variant = {
  apply: (marked, random) => {
    const chosen = one(random, marked.solutions);
    if (chosen === null) return null;
    const formula = typedAt(marked.book, chosen.depression)!.content as string;
    const wrong = String(random.pick(WRONG_KF));
    const [absolute, relative] = [fixed(chosen.constant), a1(chosen.constant)];
    const read = formula.includes(absolute) ? absolute : relative;
    const withSheet = new RegExp(`(${SHEET_PREFIX})?${read.replaceAll("$", String.raw`\$`)}`, "u");
    if (!withSheet.test(formula)) return null;
    retype(marked.book, chosen.depression, formula.replace(withSheet, wrong));
    return [chosen.depression];
  },
};

/** The molar mass of another hydrate, of one atom, of another substance, or with figures changed round. */
const WRONG_MOLAR: Readonly<Record<string, readonly number[]>> = {
  sucrose: [324.3, 180.16, 360.31],
  "sodium chloride": [35.45, 85.44, 22.99],
  fructose: [342.3, 198.17],
  "glucose monohydrate": [180.16, 342.3],
  "potassium chloride": [39.1, 58.44],
  "sodium bicarbonate": [105.99, 61.02],
};
const WRONG_PARTICLES: Readonly<Record<string, readonly number[]>> = {
  sucrose: [2],
  "sodium chloride": [1, 3],
  fructose: [2],
  "glucose monohydrate": [2],
  "potassium chloride": [1],
  "sodium bicarbonate": [1, 3],
};

const wrongFor = (
  cells: "molarMasses" | "particles",
  wrong: Readonly<Record<string, readonly number[]>>,
): Variant => ({
  apply: (marked, random) => {
    const chosen = one(random, marked.solutions);
    if (chosen === null) return null;
    const at = random.whole(0, chosen.names.length - 1);
    const values = wrong[soluteAt(marked, chosen.names[at]!)!.en]!;
    const spot = chosen[cells][at]!;
    retypeNumber(marked, spot, random.pick(values), 2);
    return [spot];
  },
});

/** Leaves the number of particles out of a salt's formula. */
const withoutParticles: Variant = {
  apply: (marked, random) => {
    const salty = marked.solutions.flatMap((solution) =>
      solution.names.flatMap((spot, index) =>
        soluteAt(marked, spot)!.particles > 1 ? [{ solution, index }] : [],
      ),
    );
    const chosen = one(random, salty);
    if (chosen === null) return null;
    const { solution, index } = chosen;
    const particles = a1(solution.particles[index]!);
    for (const spot of [solution.moles[index]!, solution.depression]) {
      const formula = typedAt(marked.book, spot)!.content as string;
      const without = formula.replace(`*${particles}`, "").replace(`=${particles}*`, "=");
      if (without !== formula) {
        retype(marked.book, spot, without);
        return [spot, solution.depression];
      }
    }
    return null;
  },
};

const NUTS = [
  ["hazelnuts", "Haselnüsse"],
  ["almonds", "Mandeln"],
  ["digestive biscuits", "Vollkornkekse"],
  ["pistachios", "Pistazien"],
] as const;

/** Nuts among the solutes, with a sugar's molar mass. */
const nutsAmongSolutes: Variant = {
  apply: (marked, random) => {
    const sugars = marked.solutions.flatMap((solution) =>
      solution.names.flatMap((spot, index) =>
        soluteAt(marked, spot)!.particles === 1 ? [{ solution, index }] : [],
      ),
    );
    const chosen = one(random, sugars);
    if (chosen === null) return null;
    const { solution, index } = chosen;
    const isGerman =
      soluteAt(marked, solution.names[index]!)!.de === textAt(marked, solution.names[index]!);
    retype(marked.book, solution.names[index]!, random.pick(NUTS)[isGerman ? 1 : 0]);
    const lines = [solution.names, solution.grams, solution.molarMasses, solution.particles];
    const counted = [solution.moles[index]!, ...(solution.counted?.slice(index, index + 1) ?? [])];
    return [...lines.map((cells) => cells[index]!), ...counted, solution.depression];
  },
};

/** The second way in which `inclusion-as-solute` happens. */
export const nutsInClass = nutsAmongSolutes;

/** Mistakes in hand-made formulas of the ideal law. */
export const classMutations: readonly Mutation[] = [
  {
    rule: "ideal-law-too-far-off",
    variants: [tooStrong],
    fair: {
      "result-differs": "the depression is not what the solution gives",
      "more-than-dissolves": "so strong that not all of it may dissolve",
    },
  },
  {
    rule: "cryoscopic-constant",
    variants: [wrongConstant, constantInFormula],
    fair: {
      ...WRONG_LAW,
      "hard-coded-number": "a constant typed into a formula",
      "inconsistent-formula": "one row of a column",
    },
  },
  {
    rule: "constant-of-a-solute",
    variants: [wrongFor("molarMasses", WRONG_MOLAR), wrongFor("particles", WRONG_PARTICLES)],
    sameLine: ["particles-not-counted"],
    fair: WRONG_LAW,
  },
  {
    rule: "particles-not-counted",
    sameLine: ["constant-of-a-solute"],
    variants: [withoutParticles],
    fair: { ...WRONG_LAW, "inconsistent-formula": "one row of a column" },
  },
];
