import { outsideValidity, type Problem } from "../foundation/problem";
import type { Mix } from "./mix";

/** Refuses a mix with something that is no food (glycols, methanol) where the answer is meant to be eaten. */
export function notFood({ parts, doses }: Mix): Problem | null {
  const part = parts.find(
    ({ item, grams }) => grams > 0 && item.facts.cautions.includes("not food"),
  );
  const dose = doses.find(({ substance }) => !substance.food);
  const name = part?.item.name ?? dose?.substance.name;
  return name === undefined
    ? null
    : outsideValidity(
        `items: "${name}" is not a food and must not be in anything that is eaten; it can only be calculated with for class, and edible ingredients are expected here.`,
      );
}
