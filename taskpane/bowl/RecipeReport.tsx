import { useMemo, useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import type { ServingTarget } from "../../src/catalogue/target";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import { Cautions } from "./Cautions";
import { ColdTable } from "./ColdTable";
import { CurveFigure } from "./CurveFigure";
import { FreezingPoint } from "./FreezingPoint";
import { recipeAnswers, recipeTrouble } from "./recipeAnswers";
import type { RecognisedRecipe } from "./recognised";
import { Sources } from "./Sources";
import { SumsLine } from "./SumsLine";
import { TargetCheck } from "./TargetCheck";
import { TargetSelect } from "./TargetSelect";
import { TemperatureField } from "./TemperatureField";
import { toGrams } from "./toGrams";

interface RecipeReportProps {
  readonly context: PaneContext;
  readonly recipe: RecognisedRecipe;
  readonly own: Matrix | null;
}

const USUAL_SERVING_C = -14;
const STORAGE_C = -18; // a household freezer's nominal temperature, IEC 62552-1 (four stars)

/** Everything the functions say about a recipe. */
export function RecipeReport({ context, recipe, own }: RecipeReportProps) {
  const [servingC, setServingC] = useState(USUAL_SERVING_C);
  const [target, setTarget] = useState<ServingTarget | null>(null);
  const answers = useMemo(() => {
    const inGrams = toGrams(recipe, own);
    const name = target?.name ?? null;
    return recipeAnswers({ recipe: inGrams, own, servingC, storageC: STORAGE_C, target: name });
  }, [recipe, own, servingC, target]);
  const trouble = recipeTrouble(answers);
  if (trouble !== null) {
    return (
      <div role="status">
        <Notice tone="trouble">{trouble}</Notice>
      </div>
    );
  }
  return (
    <>
      <FreezingPoint context={context} answers={answers} />
      <div class="fields">
        <TargetSelect
          context={context}
          target={target}
          onChange={(next) => {
            setTarget(next);
            if (next !== null) setServingC(next.temperatureC);
          }}
        />
        <TemperatureField
          context={context}
          label={context.words.servedAt}
          valueC={servingC}
          onChange={setServingC}
        />
      </div>
      {target !== null && <TargetCheck context={context} target={target} check={answers.check} />}
      <ColdTable context={context} answers={answers} />
      <SumsLine context={context} answers={answers} />
      <CurveFigure context={context} answers={answers} target={target} />
      <Cautions context={context} cautions={answers.cautions} />
      <Sources context={context} />
    </>
  );
}
