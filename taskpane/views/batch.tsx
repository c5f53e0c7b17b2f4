import { useCallback, useState } from "preact/hooks";
import { useServing } from "../aims/useServing";
import { withBaseWrittenOut } from "../batch/baseMix";
import { namesBase } from "../batch/namesBase";
import { BasePart } from "../batch/BasePart";
import { CardPart } from "../batch/CardPart";
import { ComparePart } from "../batch/ComparePart";
import { CostPart } from "../batch/CostPart";
import { HoursPart } from "../batch/HoursPart";
import { LabelPart } from "../batch/LabelPart";
import { RescuePart } from "../batch/RescuePart";
import { SizePart } from "../batch/SizePart";
import { useRecipe } from "../bowl/useRecipe";
import { ChosenRecipe } from "../components/ChosenRecipe";
import { Notice } from "../components/Notice";
import { rowsOf, type RecipeMix } from "../bowl/askMix";
import type { View, ViewProps } from "../view";
import "../batch/batch.css";
import "../curves/curves.css";

/** The selected recipe as a batch: its size, time and cost, what is in the bowl, versions, label and card. */
function Batch({ context, active }: ViewProps) {
  const recipe = useRecipe(context, active);
  const { recognition } = recipe;
  const { servingC, onServing } = useServing(
    context,
    recognition?.kind === "recipe" ? recognition : null,
  );
  const [base, setBase] = useState<RecipeMix | null>(null);
  const meant = useCallback(
    (mix: RecipeMix) => (base === null ? mix : withBaseWrittenOut(mix, base)),
    [base],
  );
  if (context.host === null) return <Notice tone="note">{context.words.batch.outside}</Notice>;
  return (
    <div class="batch">
      <ChosenRecipe context={context} recipe={recipe} meant={meant}>
        {(mix, recognised) => {
          const part = { context, mix, rows: rowsOf(mix), servingC, onHold: recipe.hold };
          const key = `${recognised.sheet}!${recognised.amountRange}`;
          return (
            <>
              <h2>{mix.title}</h2>
              <SizePart key={`size ${key}`} {...part} />
              <HoursPart {...part} />
              <CostPart key={`cost ${key}`} {...part} recipe={recognised} />
              <RescuePart key={`rescue ${key}`} {...part} />
              <ComparePart {...part} />
              <BasePart
                {...part}
                base={base}
                isUsed={base !== null && namesBase(recognised, base.title)}
                onKeep={setBase}
              />
              <LabelPart key={`label ${key}`} {...part} />
              <CardPart key={`card ${key}`} {...part} onServing={onServing} />
            </>
          );
        }}
      </ChosenRecipe>
    </div>
  );
}

export const batch: View = { key: "batch", Content: Batch };
