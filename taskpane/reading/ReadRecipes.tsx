import type { ReportedRecipes } from "../../src/audit/auditWorkbook";
import type { PaneContext } from "../view";

interface ReadRecipesProps {
  readonly context: PaneContext;
  readonly recipes: readonly ReportedRecipes[];
}

/** What the read-through took for recipes: what it did not see, it did not check. */
export function ReadRecipes({ context, recipes }: ReadRecipesProps) {
  const { words } = context;
  if (recipes.length === 0) return <p>{words.readThrough.noRecipes}</p>;
  return (
    <details class="read-recipes">
      <summary>
        {words.readThrough.recipes(recipes.reduce((sum, block) => sum + block.recipes, 0))}
      </summary>
      <ul>
        {recipes.map(({ sheet, range, taken }) => (
          <li key={`${sheet}!${range}`}>
            <strong>
              {sheet}!{range}
            </strong>
            <p>{taken}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}
