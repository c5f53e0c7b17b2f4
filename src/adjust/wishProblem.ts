import { COLDEST_C } from "../foundation/constants";
import { badInput, type Problem } from "../foundation/problem";
import type { AdjustWish } from "./adjustment";

/** Least and most that a wish can ask for, and its unit in a sentence. */
const LIMITS: Readonly<Record<AdjustWish["kind"], readonly [number, number, string]>> = {
  "ice fraction": [0, 1, ""],
  "freezing point": [COLDEST_C, 0, " °C"],
  sweetness: [0, 1000, " g per 100 g"],
  component: [0, 100, " g per 100 g"],
  total: [0, 1e9, " g"],
  cost: [0, 1e9, ""],
};

/** What is wrong with the numbers of a wish, or null. */
export function wishProblem(wish: AdjustWish, place: string): Problem | null {
  const { kind, from, to } = wish;
  const [least, most, unit] = LIMITS[kind];
  for (const end of [from, to]) {
    if (end !== null && !(end >= least && end <= most)) {
      return badInput(
        `${place}: the ${kind} is to be ${end}${unit}; ${least} to ${most}${unit} can be asked for.`,
      );
    }
  }
  if (from !== null && to !== null && from > to) {
    return badInput(
      `${place}: the ${kind} is to go from ${from} to ${to}; the smaller comes first.`,
    );
  }
  if (kind === "ice fraction" && !(wish.temperatureC >= COLDEST_C && wish.temperatureC < 0)) {
    return badInput(
      `${place}: the ice fraction is asked for at ${wish.temperatureC} °C; a temperature from ${COLDEST_C} to below 0 °C is expected.`,
    );
  }
  return null;
}
