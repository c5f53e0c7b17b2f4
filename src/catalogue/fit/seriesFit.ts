import type { HeldWaterCurve } from "../../engine/heldWaterCurve";
import { iceLineThetaMolPerKg } from "../../engine/iceLine";
import { waterHeldKgPerMol } from "../../engine/waterHeld";
import { leastSquares } from "./leastSquares";
import type { SeriesPlan, SeriesTerm } from "./plan";
import type { FreezingPointOfOne } from "./points";

export type SeriesCurve = Extract<HeldWaterCurve, { form: "series" }>;

/** Debye–Hückel slope of water at 0 °C, (kg/mol)^½. @source archerWang1990 */
const DEBYE_HUECKEL_0C = 0.3767;

/** Printed tables round to 0.01 K (0.003 K standard); what else they miss grows with the depression. */
const toleranceK = (depressionK: number) => 0.003 + 0.006 * depressionK;

/** The curve without anything fitted: Raoult and Debye–Hückel. */
export function bareSeries(charges: readonly number[]): SeriesCurve {
  const ions = Math.max(charges.length, 1);
  const product = charges.length === 0 ? 0 : -Math.max(...charges) * Math.min(...charges);
  const strength = charges.reduce((sum, charge) => sum + charge * charge, 0) / 2;
  const debyeHueckel = DEBYE_HUECKEL_0C * product * Math.sqrt(ions * strength);
  return { form: "series", ions, debyeHueckel, a: [0, 0, 0, 0], e: 0, e2: 0, k: [0, 0] };
}

export function withTerms(
  bare: SeriesCurve,
  terms: readonly SeriesTerm[],
  values: readonly number[],
): SeriesCurve {
  const of = (term: SeriesTerm) => rounded(values[terms.indexOf(term)] ?? 0);
  return {
    ...bare,
    debyeHueckel: rounded(bare.debyeHueckel),
    a: [of("a0"), of("a1"), of("a2"), of("a3")],
    e: of("e"),
    e2: of("e2"),
  };
}

/** Seven figures: what a file keeps, so that a second run writes the same bytes. */
export const rounded = (value: number) => Number(value.toPrecision(7));

/**
 * A weak belief that no coefficient is much above 60 keeps short tables from extrapolating wildly; it
 * weighs as much as one printed figure per coefficient.
 */
const USUAL_SIZE = 60;

/** Colder than the last printed figure, a belief worth a third of itself: the osmotic coefficient stays put. */
const BELIEF = 0.3;
const BELIEVED_AT_C = [-10, -20, -30, -40, -50, -60];

/** Rows of that belief: held water falls as 1/θ from the coldest figure on. */
function beliefs(points: readonly FreezingPointOfOne[]): { theta: number; held: number }[] {
  const coldest = points.reduce((a, b) => (b.freezingPointC < a.freezingPointC ? b : a));
  const from = iceLineThetaMolPerKg(coldest.freezingPointC);
  return BELIEVED_AT_C.filter((atC) => atC < 1.5 * coldest.freezingPointC).map((atC) => {
    const theta = iceLineThetaMolPerKg(atC);
    return { theta, held: from / theta / coldest.molalityMolPerKg };
  });
}

/**
 * Weighted linear least squares in the held water at the measured temperature; a miss in held water is
 * turned into kelvins by the slope of the curve itself, found in a few rounds.
 */
export function fitSeries(
  { charges, terms }: Pick<SeriesPlan, "charges" | "terms">,
  points: readonly FreezingPointOfOne[],
): SeriesCurve {
  const bare = bareSeries(charges);
  const heldBare = (theta: number) => waterHeldKgPerMol(bare, theta, "freezing");
  const row = (theta: number, weight: number) =>
    terms.map((term) => {
      const withOne = waterHeldKgPerMol(withTerms(bare, [term], [1]), theta, "freezing");
      return weight * (withOne - heldBare(theta));
    });
  let curve = bare;
  for (let round = 0; round < 4; round++) {
    const rows: number[][] = [];
    const targets: number[] = [];
    const add = (theta: number, held: number, weight: number) => {
      rows.push(row(theta, weight));
      targets.push(weight * (held - heldBare(theta)));
    };
    for (const point of points) {
      const theta = iceLineThetaMolPerKg(point.freezingPointC);
      add(theta, 1 / point.molalityMolPerKg, kelvinsPerHeldWater(curve, point));
    }
    for (const { theta, held } of beliefs(points)) add(theta, held, 1 / (BELIEF * held));
    terms.forEach((_, i) => {
      rows.push(terms.map((_, j) => (i === j ? 1 / USUAL_SIZE : 0)));
      targets.push(0);
    });
    curve = withTerms(bare, terms, leastSquares(rows, targets));
  }
  return curve;
}

/** Tolerances by which a freezing point moves when the held water moves by 1 kg/mol. */
function kelvinsPerHeldWater(curve: SeriesCurve, { freezingPointC }: FreezingPointOfOne): number {
  const stepK = 0.01 * Math.min(1, -freezingPointC);
  const held = (temperatureC: number) =>
    waterHeldKgPerMol(curve, iceLineThetaMolPerKg(temperatureC), "freezing");
  const slope = (held(freezingPointC + stepK) - held(freezingPointC - stepK)) / (2 * stepK);
  return 1 / Math.max(Math.abs(slope), 1e-6) / toleranceK(-freezingPointC);
}
