import type { Mutation } from "./mutation";
import { amountMutations } from "./mutations/amounts";
import { classMutations, nutsInClass } from "./mutations/classes";
import { filterMutations } from "./mutations/filters";
import { formulaMutations } from "./mutations/formulas";
import { ingredientMutations } from "./mutations/ingredients";
import { limitMutations } from "./mutations/limits";
import { pastingMutations } from "./mutations/pasting";
import { resultMutations } from "./mutations/results";
import { targetMutations } from "./mutations/targets";
import { temperatureMutations } from "./mutations/temperatures";
import { singleCallMutations } from "./mutations/singleCalls";

const IN_CLASS = {
  "constant-of-a-solute": "the molar mass of sugar beside another name",
  "ideal-law-too-far-off": "the answer is further off than the stated tolerance",
  "caution-not-named": "nuts have to be told",
  "unknown-ingredient": "no solute of that name",
};

const withClass = (mutation: Mutation): Mutation =>
  mutation.rule === "inclusion-as-solute"
    ? {
        ...mutation,
        variants: [...mutation.variants, nutsInClass],
        fair: { ...mutation.fair, ...IN_CLASS },
      }
    : mutation;

/** Every mistake that is seeded, one entry a rule. */
export const mutations: readonly Mutation[] = [
  ...[
    ...targetMutations,
    ...temperatureMutations,
    ...resultMutations,
    ...classMutations,
    ...ingredientMutations,
  ],
  ...[...amountMutations, ...formulaMutations, ...pastingMutations, ...limitMutations],
  ...singleCallMutations,
  ...filterMutations,
].map(withClass);
