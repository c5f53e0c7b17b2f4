import { WATER_MOLAR_MASS_KG_PER_MOL as MW } from "../foundation/constants";
import type { HeldWaterCurve } from "./heldWaterCurve";
import { iceLineTemperatureC } from "./iceLineTemperature";

/** Curves change with temperature up to 25 °C and stay there above: extrapolated further they run away. */
const WARMEST_C = 25;

/** Growth of the Debye–Hückel slope from 0 to 25 °C: 0.3767 to 0.3915. @source archerWang1990 */
const DEBYE_HUECKEL_GROWTH = 0.0393;

/** What all solutes of one solution share at one θ. */
interface Surroundings {
  readonly theta: number;
  readonly logActivity: number;
  readonly activity: number;
  readonly raoult: number; // a/(1 − a)
  readonly warmC: number; // temperature between the ice line and 25 °C; 0 on the ice line
  readonly aboveIceLineK: number;
}

export function surroundings(theta: number, temperatureC: number | "freezing"): Surroundings {
  const logActivity = -MW * theta;
  const below = -Math.expm1(logActivity);
  const activity = 1 - below;
  const raoult = activity / below;
  if (temperatureC === "freezing") {
    return { theta, logActivity, activity, raoult, warmC: 0, aboveIceLineK: 0 };
  }
  const warmC = Math.min(temperatureC, WARMEST_C);
  const aboveIceLineK = warmC - iceLineTemperatureC(theta);
  return { theta, logActivity, activity, raoult, warmC, aboveIceLineK };
}

/**
 * Water held by one mole of a solute in a solution of a given θ, kg per mol: the inverse of the molality
 * of its pure solution. Falls as θ rises; tends to ions/θ (the exact van 't Hoff limit) as θ tends to 0.
 * @param thetaMolPerKg −ln(a_w)/M_w, above 0
 * @param temperatureC °C, or "freezing" for a solution in equilibrium with ice, whose temperature follows from θ
 * @source stokesRobinson1966 (hydration); norrish1966 (Norrish); the series is this project's own
 */
export function waterHeldKgPerMol(
  curve: HeldWaterCurve,
  thetaMolPerKg: number,
  temperatureC: number | "freezing",
): number {
  return waterHeldIn(surroundings(thetaMolPerKg, temperatureC), curve);
}

/** The same where several solutes share one solution. */
export function waterHeldIn(around: Surroundings, curve: HeldWaterCurve): number {
  switch (curve.form) {
    case "hydration":
      return hydrationKgPerMol(around, curve);
    case "norrish": {
      const fraction = norrishFraction(curve.constant, around.logActivity);
      return (MW * (1 - fraction)) / fraction;
    }
    case "series":
      return seriesKgPerMol(around, curve);
  }
}

type Form<Name> = Extract<HeldWaterCurve, { form: Name }>;

/** Raoult plus the mean number of water molecules on the sites, Σ i·xⁱ / Σ xⁱ with x = K·a. */
function hydrationKgPerMol(around: Surroundings, curve: Form<"hydration">): number {
  const { sites, constantFreezing, constant25C, units = 1 } = curve;
  const { activity, warmC, aboveIceLineK } = around;
  const warmth = aboveIceLineK === 0 ? 0 : aboveIceLineK / (WARMEST_C - warmC + aboveIceLineK);
  const x = activity * (constantFreezing + (constant25C - constantFreezing) * warmth);
  let sum = 1;
  let slope = 0;
  for (let site = 0; site < sites; site++) {
    slope = slope * x + sum;
    sum = sum * x + 1;
  }
  return MW * (around.raoult + (units * x * slope) / sum);
}

/** Mole fraction x with ln(1 − x) − K·x² = ln a; Newton from the ideal value converges from one side. */
function norrishFraction(constant: number, logActivity: number): number {
  let x = -Math.expm1(logActivity);
  for (let iteration = 0; iteration < 50; iteration++) {
    const miss = Math.log1p(-x) - constant * x * x - logActivity;
    const step = miss / (1 / (1 - x) + 2 * constant * x);
    x += step;
    if (Math.abs(step) <= 1e-15 * x) break;
  }
  return x;
}

/** DEVELOPERS.md, "The physics": Raoult, Debye–Hückel, then what was fitted. */
function seriesKgPerMol(around: Surroundings, curve: Form<"series">): number {
  const { theta, activity, raoult, warmC, aboveIceLineK } = around;
  const { ions, debyeHueckel, a, e, e2, k } = curve;
  const u = 1 - activity;
  const root = Math.sqrt(theta);
  const charges =
    (debyeHueckel * (1 + (DEBYE_HUECKEL_GROWTH * warmC) / WARMEST_C)) / (root * (1 + root));
  const fitted =
    a[0] + u * (a[1] + u * (a[2] + u * a[3])) + e / (1 + theta / 2) + e2 / (1 + theta / 10);
  const warming = ((k[0] + k[1] * u) * aboveIceLineK) / WARMEST_C;
  return MW * (ions * raoult + activity * (fitted + warming)) - activity * charges;
}
