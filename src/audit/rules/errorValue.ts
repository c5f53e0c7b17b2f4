import type { AuditContext } from "../context";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { cellName } from "../../workbook/address";
import { rounded } from "../effect";
import { amountPlace, type RecipeBlock } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "error-in-an-amount", severity: "error" } as const;

function findIn({ mixOf }: AuditContext, block: RecipeBlock): Finding[] {
  return block.recipes.flatMap((recipe) =>
    block.names.flatMap((name) => {
      const { row, column } = amountPlace(block, recipe, name);
      const value = block.sheet.cellAt(row, column)?.value;
      if (typeof value !== "object" || value === null) return [];
      const rest = mixOf(block, recipe).grams.reduce((sum, grams) => sum + grams, 0);
      return findingAt(
        identity,
        block.sheet,
        { row, column },
        {
          message: `${cellName(row, column)}, the amount of ${name.item}, is ${value.error}: nothing can be computed from this recipe.`,
          effect: {
            quantity: "mass that can be read",
            from: rounded(rest, 1),
            to: "all of it",
            unit: "g",
          },
          fix: "Enter the amount again, or mend the cell that it comes from.",
        },
      );
    }),
  );
}

export const errorValue: Rule = {
  ...identity,
  title: "An amount is an error",
  find: (context) => context.blocks.flatMap((block) => findIn(context, block)),
};
