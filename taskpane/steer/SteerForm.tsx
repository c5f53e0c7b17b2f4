import { useEffect, useRef } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import type { RecognisedRecipe } from "../bowl/recognised";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import { Answer } from "./Answer";
import { Exchange } from "./Exchange";
import { MayChange } from "./MayChange";
import type { SteerLine } from "./steerLines";
import { useSteering } from "./useSteering";
import { Wishes } from "./Wishes";

interface SteerFormProps {
  readonly context: PaneContext;
  readonly recipe: RecognisedRecipe;
  readonly lines: readonly SteerLine[];
  readonly own: Matrix | null;
  readonly onHold: (hold: boolean) => void;
}

/** Wishes, what may change for them, one button, and the answer. */
export function SteerForm({ context, recipe, lines, own, onHold }: SteerFormProps) {
  const texts = context.words.steer;
  const steering = useSteering(context, recipe, lines, own);
  const { asked, trouble, fault } = steering;
  const answer = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (asked !== null) answer.current?.focus(); // into view, and the next key works on it
  }, [asked]);
  return (
    <>
      <Wishes
        context={context}
        value={steering.wishes}
        totalGrams={steering.totalGrams}
        onChange={steering.changeWishes}
      />
      <MayChange
        context={context}
        lines={steering.lines}
        choices={steering.choices}
        asksPrices={steering.asksPrices}
        pricesFound={steering.pricesFound}
        onChoose={steering.choose}
        onAdd={steering.add}
      />
      <div class="buttons">
        <button type="button" class="primary" onClick={steering.find}>
          {texts.find}
        </button>
      </div>
      <Exchange
        context={context}
        lines={steering.lines}
        servingC={steering.servingC}
        onAsk={steering.exchange}
      />
      {fault !== null && <Notice tone="trouble">{fault}</Notice>}
      {trouble !== null && <Notice tone="warning">{trouble}</Notice>}
      {asked !== null && (
        <div class="steer-answer" ref={answer} tabIndex={-1}>
          <Answer context={context} recipe={recipe} asked={asked} onHold={onHold} />
        </div>
      )}
    </>
  );
}
