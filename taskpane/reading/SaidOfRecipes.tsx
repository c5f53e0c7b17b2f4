import type { RecipeCorrection } from "../../src/audit/recipes/corrections/recipeCorrection";
import type { PaneContext } from "../view";
import { correctionRows, correctionSheet, placeCorrected } from "./correctionRows";
import { KeepRows } from "./KeepRows";
import { storeRows } from "./storeRows";
import type { useCorrections } from "./useCorrections";

interface SaidOfRecipesProps {
  readonly context: PaneContext;
  readonly corrections: ReturnType<typeof useCorrections>;
  readonly onReadAgain: () => void;
}

/** What the user said of recipes, to be taken back, or kept with the workbook. */
export function SaidOfRecipes({ context, corrections, onReadAgain }: SaidOfRecipesProps) {
  const { correct: texts, correctionSheet: sheetTexts } = context.words.readThrough;
  const { now, sheet } = corrections;
  const how = ({ recipe, names = "", amounts = "", unit = "" }: RecipeCorrection): string =>
    [texts.kinds[recipe], names, amounts, unit].filter((part) => part !== "").join("; ");
  return (
    <>
      {now.length > 0 && <h3>{texts.said(now.length)}</h3>}
      <ul>
        {now.map((correction) => {
          const place = `${correction.sheet}!${correction.range}`;
          return (
            <li key={place}>
              {place}: {how(correction)}{" "}
              <button
                type="button"
                class="small"
                aria-label={texts.takeBackFor(place)}
                onClick={() => {
                  corrections.remove(placeCorrected(correction.sheet, correction.range));
                  onReadAgain();
                }}
              >
                {texts.takeBack}
              </button>
            </li>
          );
        })}
      </ul>
      <KeepRows
        context={context}
        texts={sheetTexts}
        sheet={sheet}
        isStored={corrections.isStored}
        store={(to) => storeRows(to, correctionSheet, correctionRows(now), sheet, sheetTexts)}
        onStored={corrections.onStored}
      />
    </>
  );
}
