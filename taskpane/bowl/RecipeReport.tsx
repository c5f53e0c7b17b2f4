import { useEffect, useMemo } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { useServing } from "../aims/useServing";
import type { PaneContext } from "../view";
import { Cautions } from "./Cautions";
import { ColdTable } from "./ColdTable";
import { CurveFigure } from "./CurveFigure";
import { eaterFacts } from "./eaterFacts";
import { FormulaPanel } from "./FormulaPanel";
import { FreezingPoint } from "./FreezingPoint";
import { recipeAnswers } from "./recipeAnswers";
import { recipeTrouble } from "./recipeTrouble";
import type { OwnRange } from "./ownIngredients";
import type { RecognisedRecipe } from "./recognised";
import { recipeFormulas } from "./recipeFormulas";
import { RecipeTrouble } from "./RecipeTrouble";
import { ServingFields } from "./ServingFields";
import { spokenAnswer } from "./spokenAnswer";
import { Sources } from "./Sources";
import { SumsLine } from "./SumsLine";
import { TargetCheck } from "./TargetCheck";
import { HOUSEHOLD_FREEZER_C } from "./usualTemperatures";
import { toGrams } from "./toGrams";

interface RecipeReportProps {
  readonly context: PaneContext;
  readonly recipe: RecognisedRecipe;
  /** The own ingredients that count: where they are, and their cells. */
  readonly own: { readonly range: OwnRange | null; readonly cells: Matrix | null };
  /** Asks for the recipe to stay while the selection moves, or lets go of it. */
  readonly onHold: (hold: boolean) => void;
}

/** Everything the functions say about a recipe. */
export function RecipeReport({ context, recipe, own, onHold }: RecipeReportProps) {
  const { aim, servingC, onAim, onServing } = useServing(context, recipe);
  const inGrams = useMemo(() => toGrams(recipe, own.cells), [recipe, own.cells]);
  const answers = useMemo(
    () =>
      recipeAnswers({
        recipe: inGrams,
        own: own.cells,
        servingC,
        storageC: HOUSEHOLD_FREEZER_C,
        target: aim,
      }),
    [inGrams, own.cells, servingC, aim],
  );
  const facts = useMemo(() => eaterFacts(inGrams, own.cells), [inGrams, own.cells]);
  const trouble = recipeTrouble(answers.waterGrams, answers.freezingPointC);
  const { announce } = context;
  const spoken = spokenAnswer(recipe.title, answers, context);
  useEffect(() => announce(spoken), [announce, spoken]);
  if (trouble !== null) {
    return <RecipeTrouble context={context} recipe={recipe} own={own.cells} sentence={trouble} />;
  }
  return (
    <>
      <FreezingPoint context={context} answers={answers} />
      <ServingFields
        context={context}
        target={aim}
        servingC={servingC}
        onTarget={onAim}
        onServing={onServing}
      />
      {aim !== null && <TargetCheck context={context} target={aim} check={answers.check} />}
      <ColdTable context={context} answers={answers} />
      <SumsLine context={context} answers={answers} />
      <FormulaPanel
        context={context}
        title={recipe.title}
        formulas={recipeFormulas(recipe, own.range, servingC, aim)}
        onOpen={onHold}
      />
      <CurveFigure context={context} answers={answers} target={aim} />
      <Cautions context={context} facts={facts} />
      <Sources context={context} />
    </>
  );
}
