import { badInput, isProblem, type Problem } from "../foundation/problem";
import type { AdjustWish, Obstacle } from "./adjustment";
import { extremeValue } from "./nearest";
import type { AdjustLine } from "./readQuestion";
import { solveWishes } from "./solveWishes";

/** A miss of this size is felt about as much as another of its kind: what makes two wishes comparable. */
const FELT: Readonly<Record<AdjustWish["kind"], (bound: number) => number>> = {
  "ice fraction": () => 0.05,
  "freezing point": () => 0.5,
  sweetness: () => 2,
  component: () => 2,
  total: (bound) => 0.05 * bound,
  cost: (bound) => 0.1 * bound,
};

const at = (wishes: readonly AdjustWish[], places: readonly number[]): readonly AdjustWish[] =>
  wishes.filter((_, place) => places.includes(place));

/** How far one wish is out of reach while those in `kept` are met; null when it is not. */
function obstacleAt(
  lines: readonly AdjustLine[],
  wishes: readonly AdjustWish[],
  wish: number,
  kept: readonly number[],
): Obstacle | null {
  const asked = wishes[wish];
  if (asked === undefined) return null;
  const others = at(wishes, kept);
  const highest = asked.from === null ? null : extremeValue(lines, asked, others, "higher");
  if (asked.from !== null && highest !== null && highest < asked.from) {
    return { wish, side: "from", wanted: asked.from, reachable: highest, kept };
  }
  const lowest = asked.to === null ? null : extremeValue(lines, asked, others, "lower");
  if (asked.to !== null && lowest !== null && lowest > asked.to) {
    return { wish, side: "to", wanted: asked.to, reachable: lowest, kept };
  }
  return null;
}

const isReachable = (lines: readonly AdjustLine[], wishes: readonly AdjustWish[]): boolean => {
  const solved = solveWishes(lines, wishes);
  return solved !== null && !isProblem(solved);
};

const felt = ({ wanted, reachable, wish }: Obstacle, wishes: readonly AdjustWish[]): number => {
  const kind = wishes[wish]?.kind ?? "total";
  return Math.abs(wanted - reachable) / Math.max(FELT[kind](Math.abs(wanted)), 1e-9);
};

/**
 * The one wish that stands in the way: of those without which the rest can be met, the one that has to give
 * way least. Where no single one frees the rest, the first in the order of the wishes that those before it
 * make unreachable.
 */
export function findObstacle(
  lines: readonly AdjustLine[],
  wishes: readonly AdjustWish[],
): Obstacle | Problem {
  const all = [...wishes.keys()];
  const alone = all.flatMap((wish) => {
    const kept = all.filter((other) => other !== wish);
    if (!isReachable(lines, at(wishes, kept))) return [];
    const found = obstacleAt(lines, wishes, wish, kept);
    return found === null ? [] : [found];
  });
  const [least] = alone.sort((one, other) => felt(one, wishes) - felt(other, wishes));
  if (least !== undefined) return least;
  for (const wish of all) {
    const kept = all.slice(0, wish);
    if (isReachable(lines, at(wishes, all.slice(0, wish + 1)))) continue;
    const found = obstacleAt(lines, wishes, wish, kept);
    if (found !== null) return found;
  }
  return badInput(
    "wishes: they cannot all be met with the ingredients that may change, and no single one of them stands in the way; fewer wishes or wider ranges are expected.",
  );
}
