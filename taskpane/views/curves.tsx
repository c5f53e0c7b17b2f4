import { useState } from "preact/hooks";
import type { ServingTarget } from "../../src/catalogue/target";
import { TargetSelect } from "../bowl/TargetSelect";
import { TemperatureField } from "../bowl/TemperatureField";
import { useRecipe } from "../bowl/useRecipe";
import { ChosenRecipe } from "../components/ChosenRecipe";
import { Notice } from "../components/Notice";
import type { PicturedMix } from "../curves/askMix";
import { FreezingPicture } from "../curves/FreezingPicture";
import { HeldPicture } from "../curves/HeldPicture";
import { MoversPicture } from "../curves/MoversPicture";
import { StatePicture } from "../curves/StatePicture";
import type { View, ViewProps } from "../view";
import "../curves/curves.css";

type Picture = "freezing" | "state" | "held" | "movers";
const PICTURES: readonly Picture[] = ["freezing", "state", "held", "movers"];
const USUAL_SERVING_C = -14;
const STORAGE_C = -18; // a household freezer's nominal temperature, IEC 62552-1 (four stars)

/** The selected recipe in pictures, each with its table, as a file or in the sheet. */
function Curves({ context, active }: ViewProps) {
  const { words, host } = context;
  const recipe = useRecipe(context, active);
  const [picture, setPicture] = useState<Picture>("freezing");
  const [servingC, setServingC] = useState(USUAL_SERVING_C);
  const [target, setTarget] = useState<ServingTarget | null>(null);
  const [other, setOther] = useState<PicturedMix | null>(null);
  const texts = words.curves;
  if (host === null) return <Notice tone="note">{texts.outside}</Notice>;
  return (
    <ChosenRecipe context={context} recipe={recipe}>
      {(mix) => {
        // Beside itself a recipe would only hide its own curve.
        const isSame =
          JSON.stringify([mix.items, mix.grams]) === JSON.stringify([other?.items, other?.grams]);
        const shown = { context, mix, servingC, storageC: STORAGE_C };
        return (
          <div class="curves">
            <label class="field">
              <span>{texts.picture}</span>
              <select
                value={picture}
                onChange={(event) => setPicture(event.currentTarget.value as Picture)}
              >
                {PICTURES.map((key) => (
                  <option key={key} value={key}>
                    {texts.pictures[key]}
                  </option>
                ))}
              </select>
            </label>
            <div class="fields">
              {picture === "freezing" && (
                <TargetSelect
                  context={context}
                  target={target}
                  onChange={(next) => {
                    setTarget(next);
                    if (next !== null) setServingC(next.temperatureC);
                  }}
                />
              )}
              <TemperatureField
                context={context}
                label={words.servedAt}
                valueC={servingC}
                onChange={setServingC}
              />
            </div>
            {picture === "freezing" && (
              <FreezingPicture {...shown} target={target} other={isSame ? null : other} />
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
