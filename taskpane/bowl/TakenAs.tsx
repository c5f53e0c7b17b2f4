import type { PaneContext } from "../view";
import { usedNames } from "./usedNames";
import type { OwnRange } from "./ownIngredients";
import type { RecognisedRecipe } from "./recognised";

interface TakenAsProps {
  readonly context: PaneContext;
  readonly recipe: RecognisedRecipe;
  readonly own: OwnRange | null;
  readonly onChange: (() => void) | null;
}

/** Says what was taken for what, so that a wrong reading is seen before its answer is believed. */
export function TakenAs({ context, recipe, own, onChange }: TakenAsProps) {
  const { words } = context;
  const texts = words.taken;
  const unknown = recipe.lines.filter(({ known, amount }) => !known && amount !== "");
  const unitTexts: Readonly<Record<string, string>> = texts.unitIs;
  const unit = unitTexts[recipe.unit] ?? recipe.unit;
  return (
    <details class="taken">
      <summary>
        {texts.summary(usedNames(recipe).length, recipe.nameRange, recipe.amountRange)}
      </summary>
      <dl>
        <dt>{texts.names}</dt>
        <dd>{recipe.nameRange}</dd>
        <dt>{texts.amounts}</dt>
        <dd>
          {recipe.amountRange}
          {recipe.amountHeader !== "" && ` (${recipe.amountHeader})`}
        </dd>
        <dt>{texts.unit}</dt>
        <dd>
          {unit}, {texts.origins[recipe.unitOrigin]}
        </dd>
        <dt>{texts.own}</dt>
        <dd>{own === null ? texts.noOwn : `${own.sheet}!${own.address}`}</dd>
        {unknown.length > 0 && (
          <>
            <dt>{texts.unknown}</dt>
            <dd>{unknown.map(({ name, cell }) => `${String(name)} (${cell})`).join(", ")}</dd>
          </>
        )}
        {recipe.leftOut.length > 0 && (
          <>
            <dt>{texts.leftOut}</dt>
            <dd>{recipe.leftOut.map(({ text, cell }) => `${text} (${cell})`).join(", ")}</dd>
          </>
        )}
      </dl>
      {onChange !== null && (
        <button type="button" class="small" onClick={onChange}>
          {texts.undo}
        </button>
      )}
    </details>
  );
}
