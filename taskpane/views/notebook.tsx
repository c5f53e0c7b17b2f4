import { toGrams } from "../bowl/toGrams";
import { useRecipe } from "../bowl/useRecipe";
import { Notice } from "../components/Notice";
import { rowsOf } from "../bowl/askMix";
import { BrixCorrection } from "../notebook/BrixCorrection";
import { EntryForm } from "../notebook/EntryForm";
import { FreezerOffset } from "../notebook/FreezerOffset";
import { LearnIngredient } from "../notebook/LearnIngredient";
import { Residuals } from "../notebook/Residuals";
import { useNotebook } from "../notebook/useNotebook";
import type { View, ViewProps } from "../view";
import "../curves/curves.css";

/** What was measured, beside what was forecast, on a sheet of the workbook; and what can be learnt from it. */
function Notebook({ context, active }: ViewProps) {
  const { words, host } = context;
  const texts = words.notebook;
  const { recognition, own, fault: recipeFault } = useRecipe(context, active);
  const { kept, fault, told, write } = useNotebook(context, active);
  if (host === null) return <Notice tone="note">{texts.outside}</Notice>;
  const trouble = fault ?? recipeFault;
  const measured = kept?.entries.filter(({ measuredC }) => measuredC !== null) ?? [];
  const recipe = recognition?.kind === "recipe" ? recognition : null;
  const grams = recipe === null ? null : toGrams(recipe, own.cells);
  return (
    <div class="notebook">
      {trouble !== null && <Notice tone="trouble">{trouble}</Notice>}
      {recipe === null || grams === null ? (
        <Notice tone="note">{texts.noRecipe}</Notice>
      ) : (
        <>
          <h2>{texts.writeTitle(recipe.title)}</h2>
          <EntryForm
            key={`${recipe.sheet}!${recipe.amountRange}`}
            context={context}
            title={recipe.title}
            recipe={grams}
            own={own.cells}
            onWrite={write}
          />
          {kept === null && <p class="quiet">{texts.startsSheet(texts.sheetName)}</p>}
        </>
      )}
      {told !== null && <p role="status">{told}</p>}
      {kept !== null && <p class="quiet">{texts.kept(kept.entries.length, kept.sheet)}</p>}
      {kept !== null && <Residuals context={context} entries={kept.entries} />}
      {kept !== null && kept.entries.length > 0 && (
        <>
          <h3>{texts.learnTitle}</h3>
          <FreezerOffset context={context} entries={kept.entries} />
          {measured.length > 0 && (
            <LearnIngredient
              key={measured.length}
              context={context}
              entries={measured}
              own={own.cells}
            />
          )}
        </>
      )}
      {grams !== null && (
        <BrixCorrection
          context={context}
          names={rowsOf(grams).map(({ name }) => name)}
          own={own.cells}
        />
      )}
    </div>
  );
}

export const notebook: View = { key: "notebook", Content: Notebook };
