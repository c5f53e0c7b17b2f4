import { useId, useState } from "preact/hooks";
import type { AdjustedRecipe } from "../../src/adjust/adjustment";
import type { RecognisedRecipe } from "../bowl/recognised";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import type { Asked } from "./asked";
import { AnswerTables } from "./AnswerTables";
import { newAmounts } from "./newAmounts";
import { PlaceColumn } from "./PlaceColumn";
import { outcomeSentence } from "./sentences";

interface AnswerProps {
  readonly context: PaneContext;
  readonly recipe: RecognisedRecipe;
  readonly asked: Asked;
  readonly onHold: (hold: boolean) => void;
}

/** The ways that were found, or the one sentence why there is none. */
export function Answer({ context, recipe, asked, onHold }: AnswerProps) {
  const texts = context.words.steer;
  const { steered } = asked;
  const [index, setIndex] = useState(0);
  if (steered.kind !== "recipes") {
    return (
      <Notice tone={steered.kind === "obstacle" ? "warning" : "trouble"}>
        {outcomeSentence(asked, context)}
        {steered.kind === "obstacle" && <p class="figure-why">{texts.obstacleHelp}</p>}
      </Notice>
    );
  }
  const chosen = steered.recipes[index] ?? steered.recipes[0];
  return chosen === undefined ? null : (
    <>
      {steered.recipes.length > 1 && (
        <Ways context={context} recipes={steered.recipes} index={index} onChoose={setIndex} />
      )}
      <Chosen key={chosen.way} {...{ context, recipe, asked, onHold, chosen }} />
    </>
  );
}

interface WaysProps {
  readonly context: PaneContext;
  readonly recipes: readonly AdjustedRecipe[];
  readonly index: number;
  readonly onChoose: (index: number) => void;
}

function Ways({ context, recipes, index, onChoose }: WaysProps) {
  const texts = context.words.steer;
  const group = useId();
  return (
    <fieldset class="steer-ways">
      <legend>{texts.waysTitle}</legend>
      {recipes.map(({ way }, at) => (
        <label key={way} class="check">
          <input type="radio" name={group} checked={at === index} onChange={() => onChoose(at)} />
          {texts.ways[way]}
        </label>
      ))}
    </fieldset>
  );
}

type ChosenProps = AnswerProps & { readonly chosen: AdjustedRecipe };

function Chosen({ context, recipe, asked, onHold, chosen }: ChosenProps) {
  const texts = context.words.steer;
  const { question, lines } = asked;
  const { items: names, grams: old, own } = question;
  const isSame = chosen.grams.every((grams, at) => Math.abs(grams - (old[at] ?? 0)) < 1e-9);
  const isExact = chosen.outcomes.every(({ miss }) => miss === 0);
  const isNew = lines.some(({ place }, at) => place === null && (chosen.grams[at] ?? 0) > 0);
  return (
    <>
      <Notice tone={isExact ? "good" : "note"}>{outcomeSentence(asked, context, chosen)}</Notice>
      <AnswerTables
        context={context}
        now={{ names, grams: old, own }}
        then={{ names, grams: chosen.grams, own }}
        asked={asked}
      />
      {isNew && <p class="figure-why">{texts.eat}</p>}
      {!isSame && (
        <PlaceColumn
          context={context}
          recipe={recipe}
          written={newAmounts(recipe, lines, chosen.grams, texts.placeWords)}
          onHold={onHold}
        />
      )}
    </>
  );
}
