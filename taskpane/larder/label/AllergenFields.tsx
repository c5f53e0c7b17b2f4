import { useId } from "preact/hooks";
import { ALLERGENS, type Allergen } from "../../../src/catalogue/ingredient";
import { Check } from "../../components/Check";
import type { DraftProps } from "./draftProps";

/** Unknown, or those that the label names: never nothing. */
export function AllergenFields({ context, draft, onChange }: DraftProps) {
  const { words } = context;
  const texts = words.larder.label;
  const group = useId();
  const { allergens } = draft;
  const turn = (one: Allergen, on: boolean) =>
    onChange({
      allergens: ALLERGENS.filter((each) => (each === one ? on : (allergens ?? []).includes(each))),
    });
  return (
    <fieldset class="label-allergens">
      <legend>{texts.allergens}</legend>
      {(["unknown", "read"] as const).map((how) => (
        <label class="check" key={how}>
          <input
            type="radio"
            name={group}
            checked={(how === "read") === (allergens !== null)}
            onChange={() => onChange({ allergens: how === "read" ? [] : null })}
          />
          {texts.allergenHows[how]}
        </label>
      ))}
      {allergens !== null && (
        <div class="allergen-grid">
          {ALLERGENS.map((one) => (
            <Check
              key={one}
              checked={allergens.includes(one)}
              onChange={(checked) => turn(one, checked)}
            >
              {words.allergenNames[one]}
            </Check>
          ))}
        </div>
      )}
      {allergens?.length === 0 && <p class="quiet">{texts.noneNamed}</p>}
    </fieldset>
  );
}
