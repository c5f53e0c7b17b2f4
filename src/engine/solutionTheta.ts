import type { Solution } from "./dissolved";
import { surroundings, waterHeldIn } from "./waterHeld";

/** Water activity 0.34: colder and drier than any curve has been checked. */
export const MOST_THETA_MOL_PER_KG = 60;

const LOG_MOST = Math.log(MOST_THETA_MOL_PER_KG);

/** A trace that no digit of any answer would show. */
const NOTHING_MOL_PER_KG = 1e-12;

/** Eight factors of e: no curve is that far from the ideal law. */
const WIDEST = 8;

/** Far more than any mix has needed (see the speed and convergence test). */
const MOST_STEPS = 80;

/** Water that all solutes of a solution hold at this θ, kg (Zdanovskii–Stokes–Robinson rule). */
export function heldWaterKg(
  { solutes }: Solution,
  thetaMolPerKg: number,
  temperatureC: number | "freezing",
): number {
  const around = surroundings(thetaMolPerKg, temperatureC);
  let sum = 0;
  for (const { moles, curve } of solutes) {
    if (moles > 0) sum += moles * waterHeldIn(around, curve);
  }
  return sum;
}

/**
 * θ of a mixture, mol per kg: the solution of Σ moles·w(θ) = water, to 1e-12 of itself. 0 without solute;
 * Infinity when it lies beyond water activity 0.34. ln(held water) is nearly a straight line of slope −1
 * in ln θ, so secants in the logarithms converge in a few steps; a bracket catches the rest.
 * @source stokesRobinson1966 (the mixture rule)
 */
export function solutionThetaMolPerKg(
  solution: Solution,
  temperatureC: number | "freezing",
): number {
  const moles = solution.solutes.reduce((sum, solute) => sum + solute.moles, 0);
  if (!(moles / solution.waterKg > NOTHING_MOL_PER_KG)) return 0;
  const excessAt = (logTheta: number) => {
    const held = heldWaterKg(solution, Math.exp(logTheta), temperatureC);
    return held > 0 ? Math.log(held / solution.waterKg) : -WIDEST; // past the end of a curve
  };
  const start = Math.log(moles / solution.waterKg);
  if (start > LOG_MOST - 3 && excessAt(LOG_MOST) > 0) return Infinity;
  return solve(excessAt, Math.min(start, LOG_MOST - 0.1));
}

function solve(excessAt: (logTheta: number) => number, start: number): number {
  let low = start - WIDEST;
  let high = Math.min(start + WIDEST, LOG_MOST);
  let logTheta = start;
  let excess = excessAt(start);
  let slope = -1;
  for (let step = 0; step < MOST_STEPS; step++) {
    if (Math.abs(excess) <= 2e-13 * Math.abs(slope)) break;
    if (excess > 0) low = logTheta;
    else high = logTheta;
    if (high - low <= 1e-14 * Math.abs(high)) break;
    let next = logTheta - excess / slope;
    if (!(next > low && next < high)) next = (low + high) / 2;
    const nextExcess = excessAt(next);
    const secant = (nextExcess - excess) / (next - logTheta);
    slope = secant < -0.05 ? secant : -1;
    logTheta = next;
    excess = nextExcess;
  }
  return Math.exp(logTheta);
}
