import type { RecipeCorrection } from "../../src/audit/recipes/corrections/recipeCorrection";
import { Notice } from "../components/Notice";
import { Unfold } from "../components/Unfold";
import type { PaneContext } from "../view";
import { CorrectionForm } from "./CorrectionForm";
import { SaidOfRecipes } from "./SaidOfRecipes";
import type { useCorrections } from "./useCorrections";
import type { Reading } from "./useReading";

interface ReadRecipesProps {
  readonly context: PaneContext;
  readonly reading: Reading;
  readonly corrections: ReturnType<typeof useCorrections>;
  readonly onReadAgain: () => void;
}

const MISSED: RecipeCorrection = { sheet: "", range: "", recipe: "down" };

/** What the read-through took for recipes, to be corrected: what it did not see, it did not check. */
export function ReadRecipes({ context, reading, corrections, onReadAgain }: ReadRecipesProps) {
  const texts = context.words.readThrough;
  const { workbook, report, notes } = reading;
  const { recipes } = report;
  const form = (from: RecipeCorrection) => (close: () => void) => (
    <CorrectionForm
      context={context}
      workbook={workbook}
      from={from}
      onSay={(correction) => {
        close();
        corrections.put(correction);
        onReadAgain();
      }}
      onClose={close}
    />
  );
  return (
    <>
      {recipes.length === 0 && <p>{texts.noRecipes}</p>}
      {notes.length > 0 && (
        <Notice tone="note">
          {notes.map((note) => (
            <p key={note}>{context.words.said(note)}</p>
          ))}
        </Notice>
      )}
      <details class="read-recipes">
        <summary>{texts.recipes(report.summary.recipes)}</summary>
        <ul class="findings">
          {recipes.map(({ sheet, range, taken, correction }) => (
            <li key={`${sheet}!${range}`} class="read-recipe">
              <strong>
                {sheet}!{range}
              </strong>
              <p>{context.words.said(taken)}</p>
              <Unfold
                label={texts.correct.open}
                fullLabel={texts.correct.openFor(`${sheet}!${range}`)}
                title={texts.correct.title(`${sheet}!${range}`)}
              >
                {form(correction)}
              </Unfold>
            </li>
          ))}
        </ul>
        <Unfold label={texts.correct.missed} title={texts.correct.missedTitle}>
          {form(MISSED)}
        </Unfold>
        <SaidOfRecipes context={context} corrections={corrections} onReadAgain={onReadAgain} />
      </details>
    </>
  );
}
