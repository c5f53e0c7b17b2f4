import { findingAt } from "../findingAt";
import type { Rule } from "../rule";

const identity = { id: "own-ingredients-refused", severity: "error" } as const;

export const ownIngredientsRefused: Rule = {
  ...identity,
  title: "A range of own ingredients cannot be used as it stands",
  find: ({ ownIngredients }) =>
    ownIngredients.flatMap(({ sheet, range, problem }) =>
      problem === null
        ? []
        : findingAt(identity, sheet, range, {
            message: problem.message,
            effect: {
              quantity: "own ingredients known",
              from: 0,
              to: range.bottom - range.top,
              unit: "rows",
            },
          }),
    ),
};
