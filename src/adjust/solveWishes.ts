import { isProblem, outsideValidity, type Problem } from "../foundation/problem";
import type { AdjustWish } from "./adjustment";
import { endsBelow, endUnknown, NO_END, possibleEnds, type EndsBetween } from "./endOfFreezing";
import { allMet, outcomesOf } from "./outcomes";
import { aimValue, solveProgramme, type Aim } from "./programme";
import type { AdjustLine } from "./readQuestion";
import { searchEnds } from "./searchEnds";
import type { LinearForm } from "./wishForm";
import { alwaysKept, wishRows } from "./wishRows";

/** Grams that meet every wish; null when there are none; a problem when an answer does not stand the check. */
export type Solved = readonly number[] | Problem | null;

const coldestIceC = (wishes: readonly AdjustWish[]): number =>
  Math.min(0, ...wishes.map((wish) => (wish.kind === "ice fraction" ? wish.temperatureC : 0)));

/** True when ice is asked for at a temperature below which freezing may have ended (Tm′). */
export function asksBelowTheEnd(
  lines: readonly AdjustLine[],
  wishes: readonly AdjustWish[],
): boolean {
  const ends = possibleEnds(lines);
  return ends !== null && coldestIceC(wishes) < ends.warmestC;
}

/**
 * Grams with which every wish is met and the aim is smallest, each answer recomputed from its mix. Above Tm′
 * all wishes are linear and one programme is enough. Below it the ice keeps its share, and Tm′ moves with the
 * mix: then mixes with a colder Tm′, without one, and with one in between are looked through in turn.
 */
export function solveWishes(
  lines: readonly AdjustLine[],
  wishes: readonly AdjustWish[],
  aim: Aim = "change",
): Solved {
  const attempt = (ends: EndsBetween, more: readonly LinearForm[] = []) =>
    solveProgramme(
      lines,
      [...alwaysKept(lines), ...wishes.flatMap((wish) => wishRows(lines, wish, ends)), ...more],
      aim,
    );
  const isRight = (grams: readonly number[]): boolean => allMet(outcomesOf(lines, wishes, grams));
  const ends = possibleEnds(lines);
  const iceC = coldestIceC(wishes);
  const plain = attempt(NO_END);
  const isLinear = ends === null || iceC >= ends.warmestC;
  if (isLinear && (plain === null || isRight(plain))) return plain;
  if (ends === null) return plain === null ? null : unchecked(lines, wishes, plain);
  const coldestC = isLinear ? ends.coldestC : Math.max(ends.coldestC, iceC);
  const found = [
    attempt(NO_END, [endsBelow(lines, iceC)]),
    attempt(NO_END, [endUnknown(lines)]),
    searchEnds(lines, { ...ends, coldestC }, aim, attempt, isRight),
  ].flatMap((grams) => (grams !== null && isRight(grams) ? [grams] : []));
  const [best] = found.sort(
    (one, other) => aimValue(lines, aim, one) - aimValue(lines, aim, other),
  );
  return best ?? null;
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
        "wishes: an answer was found that does not keep the wishes when it is recomputed, so it is not shown; wider wishes are expected.",
      );
}
