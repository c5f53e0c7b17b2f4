import { isProblem } from "../foundation/problem";
import type { AdjustWish } from "./adjustment";
import { mixWith, outcomesOf } from "./outcomes";
import { aimValue } from "./programme";
import type { AdjustLine } from "./readQuestion";
import { maxFreezeTemperatureC } from "../recipe/solution";
import { formValue, type LinearForm } from "./wishForm";
import { wishRows } from "./wishRows";

/** So many ways of rounding are tried at most. */
const MOST_TRIALS = 4096;

const changed = (line: AdjustLine, grams: number): boolean =>
  Math.abs(grams - line.grams) > 1e-6 * line.scaleGrams;

/** The multiples of the step about an amount that lie within the line's range, the nearest first. */
function choices(line: AdjustLine, grams: number, stepGrams: number, reach: number) {
  const nearest = Math.round(grams / stepGrams);
  const found: number[] = [];
  for (let away = -reach; away <= reach; away += 1) {
    const amount = (nearest + away) * stepGrams;
    if (amount >= line.fromGrams && amount <= line.toGrams) found.push(amount);
  }
  return found.sort((one, other) => Math.abs(one - grams) - Math.abs(other - grams));
}

/** Every combination of the choices; fewer far ones when there are many ingredients. */
function* combinations(lists: readonly (readonly number[])[]): Generator<readonly number[]> {
  const [first, ...rest] = lists;
  if (first === undefined) yield [];
  else {
    for (const tail of combinations(rest)) for (const head of first) yield [head, ...tail];
  }
}

interface Rated {
  readonly grams: readonly number[];
  /** The largest miss, in parts of what half a step of each changed ingredient moves. */
  readonly misses: number;
  readonly change: number;
}

const better = (one: Rated, other: Rated): boolean =>
  one.misses < other.misses - 1e-9 ||
  (one.misses <= other.misses + 1e-9 && one.change < other.change);

/**
 * The changed amounts of a solution as multiples of a step: all ways of rounding up and down nearby are
 * weighed, and the one that keeps the wishes best, then changes least, is taken. Plain rounding is among
 * them, so no wish is missed by more than half a step of each changed ingredient moves. Null when a range
 * holds no multiple of the step.
 */
export function inSteps(
  lines: readonly AdjustLine[],
  wishes: readonly AdjustWish[],
  solution: readonly number[],
  stepGrams: number,
): readonly number[] | null {
  const moved = lines.flatMap((line, at) => (changed(line, solution[at] ?? 0) ? [at] : []));
  const reach = 3 ** moved.length <= MOST_TRIALS ? 1 : 0;
  const lists = moved.map((at) => {
    const line = lines[at];
    return line === undefined ? [] : choices(line, solution[at] ?? 0, stepGrams, reach);
  });
  if (lists.some((list) => list.length === 0)) return null;
  const mix = mixWith(lines, solution);
  const endC = (isProblem(mix) ? null : maxFreezeTemperatureC(mix)) ?? -Infinity;
  const ends = { coldestC: endC, warmestC: endC };
  const rows = wishes.flatMap((wish) => wishRows(lines, wish, ends));
  const halfSteps = rows.map(({ perGram }) =>
    moved.reduce((sum, at) => sum + (Math.abs(perGram[at] ?? 0) * stepGrams) / 2, 0),
  );
  let best: Rated | null = null;
  for (const amounts of combinations(lists)) {
    const grams = lines.map(({ grams: given }, at) =>
      moved.includes(at) ? (amounts[moved.indexOf(at)] ?? given) : given,
    );
    const rated = rate(lines, rows, halfSteps, grams);
    if (best === null || better(rated, best)) best = rated;
  }
  return best === null || isProblem(outcomesOf(lines, wishes, best.grams)) ? null : best.grams;
}

function rate(
  lines: readonly AdjustLine[],
  rows: readonly LinearForm[],
  halfSteps: readonly number[],
  grams: readonly number[],
): Rated {
  const misses = Math.max(
    0,
    ...rows.map((row, at) => -formValue(row, grams) / Math.max(halfSteps[at] ?? 0, 1e-12)),
  );
  return {
    grams,
    misses: misses < 1e-7 ? 0 : misses,
    change: aimValue(lines, "change", grams),
  };
}
