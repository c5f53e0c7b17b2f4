import { isProblem, outsideValidity, type Problem } from "../foundation/problem";
import { maxFreezeTemperatureC } from "../recipe/solution";
import type { AdjustWish } from "./adjustment";
import { allMet, mixWith, outcomesOf } from "./outcomes";
import { solveProgramme, type Aim } from "./programme";
import type { AdjustLine } from "./readQuestion";
import type { LinearForm } from "./wishForm";
import { alwaysKept, freezingEndsBelow, warmestEndC, wishRows } from "./wishRows";

/** Grams that meet every wish; null when there are none; a problem when an answer does not stand the check. */
export type Solved = readonly number[] | Problem | null;

const MOST_ROUNDS = 40;

const coldestAsked = (wishes: readonly AdjustWish[]): number =>
  Math.min(
    0,
    ...wishes.map((wish) =>
      wish.kind === "ice fraction"
        ? wish.temperatureC
        : wish.kind === "freezing point"
          ? (wish.from ?? -Infinity)
          : 0,
    ),
  );

const endC = (lines: readonly AdjustLine[], grams: readonly number[]): number => {
  const mix = mixWith(lines, grams);
  return (isProblem(mix) ? null : maxFreezeTemperatureC(mix)) ?? -Infinity;
};

/**
 * Grams with which every wish is met and the aim is smallest, each answer recomputed from its mix. Down to
 * Tm′ the wishes are linear. Below it the ice stays at its share there, and Tm′ itself moves with the mix:
 * then the programme is solved anew with the Tm′ of its last answer until the two agree.
 */
export function solveWishes(
  lines: readonly AdjustLine[],
  wishes: readonly AdjustWish[],
  aim: Aim = "change",
): Solved {
  const attempt = (lowestC: number, more: readonly LinearForm[] = []) =>
    solveProgramme(
      lines,
      [...alwaysKept(lines), ...wishes.flatMap((wish) => wishRows(lines, wish, lowestC)), ...more],
      aim,
    );
  const isRight = (grams: readonly number[]): boolean => allMet(outcomesOf(lines, wishes, grams));
  const plain = attempt(-Infinity);
  const coldestC = coldestAsked(wishes);
  if (plain !== null && isRight(plain)) return plain;
  if (coldestC >= warmestEndC(lines))
    return plain === null ? null : unchecked(lines, wishes, plain);
  const colderEnd = Number.isFinite(coldestC)
    ? attempt(-Infinity, [freezingEndsBelow(lines, coldestC)])
    : null;
  if (colderEnd !== null && isRight(colderEnd)) return colderEnd;
  let grams: readonly number[] = plain ?? lines.map((line) => line.grams);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const next = attempt(endC(lines, grams));
    if (next === null) return null;
    if (isRight(next)) return next;
    grams = next;
  }
  return unchecked(lines, wishes, grams);
}

function unchecked(
  lines: readonly AdjustLine[],
  wishes: readonly AdjustWish[],
  grams: readonly number[],
): Problem {
  const outcomes = outcomesOf(lines, wishes, grams);
  return isProblem(outcomes)
    ? outcomes
    : outsideValidity(
        "wishes: an answer was found that does not keep the wishes when it is recomputed, so it is not shown; wishes above the temperature at which freezing ends (Tm′) are expected.",
      );
}
