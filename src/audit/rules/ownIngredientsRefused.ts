import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { OwnIngredients } from "../recipes/names/ownIngredients";
import type { Rule } from "../rule";

const identity = { id: "own-ingredients-refused", severity: "error" } as const;

const FIX = "State `same as`, or parts that add up to 100 g.";

function findIn({ sheet, range, problem, refusedRows }: OwnIngredients): Finding[] {
  const rows = range.bottom - range.top;
  const effect = (known: number) => ({
    quantity: "own ingredients known",
    from: known,
    to: rows,
    unit: "rows",
  });
  if (problem !== null)
    return [
      findingAt(identity, sheet, range, { message: problem.message, effect: effect(0), fix: FIX }),
    ];
  return refusedRows.map(({ row, problem: { message } }) =>
    findingAt(
      identity,
      sheet,
      { row, column: range.left },
      { message, effect: effect(rows - refusedRows.length), fix: FIX },
    ),
  );
}

export const ownIngredientsRefused: Rule = {
  ...identity,
  title: "Own ingredients cannot be used as they stand",
  find: ({ ownIngredients }) => ownIngredients.flatMap(findIn),
};
