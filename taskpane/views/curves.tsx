import { useState } from "preact/hooks";
import { useServing } from "../aims/useServing";
import { ServingFields } from "../bowl/ServingFields";
import { TemperatureField } from "../bowl/TemperatureField";
import { HOUSEHOLD_FREEZER_C } from "../bowl/usualTemperatures";
import { useRecipe } from "../bowl/useRecipe";
import { Choice } from "../components/Choice";
import { ChosenRecipe } from "../components/ChosenRecipe";
import { Notice } from "../components/Notice";
import { isSameMix, type RecipeMix } from "../bowl/askMix";
import { FreezingPicture } from "../curves/FreezingPicture";
import { HeldPicture } from "../curves/HeldPicture";
import { MoversPicture } from "../curves/MoversPicture";
import { StatePicture } from "../curves/StatePicture";
import type { View, ViewProps } from "../view";
import "../curves/curves.css";

type Picture = "freezing" | "state" | "held" | "movers";
const PICTURES: readonly Picture[] = ["freezing", "state", "held", "movers"];

/** The selected recipe in pictures, each with its table, as a file or in the sheet. */
function Curves({ context, active }: ViewProps) {
  const { words, host } = context;
  const recipe = useRecipe(context, active);
  const [picture, setPicture] = useState<Picture>("freezing");
  const { recognition } = recipe;
  const { aim, servingC, onAim, onServing } = useServing(
    context,
    recognition?.kind === "recipe" ? recognition : null,
  );
  const [other, setOther] = useState<RecipeMix | null>(null);
  const texts = words.curves;
  if (host === null) return <Notice tone="note">{texts.outside}</Notice>;
  return (
    <ChosenRecipe context={context} recipe={recipe}>
      {(mix) => {
        // Beside itself a recipe would only hide its own curve.
        const isSame = other !== null && isSameMix(mix, other);
        const shown = { context, mix, servingC, storageC: HOUSEHOLD_FREEZER_C };
        return (
          <div class="curves">
            <Choice
              label={texts.picture}
              value={picture}
              options={PICTURES.map((key) => ({ value: key, label: texts.pictures[key] }))}
              onChange={setPicture}
            />
            {picture === "freezing" ? (
              <ServingFields
                context={context}
                target={aim}
                servingC={servingC}
                onTarget={onAim}
                onServing={onServing}
              />
            ) : (
              <div class="fields">
                <TemperatureField
                  context={context}
                  label={words.servedAt}
                  valueC={servingC}
                  onChange={onServing}
                />
              </div>
            )}
            {picture === "freezing" && (
              <FreezingPicture {...shown} target={aim} other={isSame ? null : other} />
            )}
            {picture === "state" && <StatePicture {...shown} />}
            {picture === "held" && <HeldPicture {...shown} />}
            {picture === "movers" && <MoversPicture {...shown} />}
            {picture === "freezing" && (
              <div class="other-recipe">
                {other !== null && <span>{texts.otherIs(other.title)}</span>}
                <button
                  type="button"
                  class="small"
                  onClick={() => setOther(other === null ? mix : null)}
                >
                  {other === null ? texts.keepOther(mix.title) : texts.dropOther}
                </button>
              </div>
            )}
          </div>
        );
      }}
    </ChosenRecipe>
  );
}

export const curves: View = { key: "curves", Content: Curves };
