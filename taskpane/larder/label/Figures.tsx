import { Choice } from "../../components/Choice";
import { Check } from "../../components/Check";
import { NumberField } from "../../components/NumberField";
import { PRINTED, SELDOM_PRINTED, type PartKey } from "./draft";
import type { DraftProps } from "./draftProps";
import { SugarKinds } from "./SugarKinds";

const MOST_GRAMS = 10_000; // of a part in the amount that the figures are for: a whole pack

/** The amount that the figures are for, and the weight of a millilitre where that is needed. */
function Basis({ context, draft, onChange }: DraftProps) {
  const texts = context.words.larder.label;
  const { per, perUnit, gramsPerMl } = draft;
  return (
    <div class="fields even">
      <NumberField
        context={context}
        label={texts.per}
        unit={perUnit}
        from={0.1}
        to={MOST_GRAMS}
        value={per}
        isRequired
        onChange={(next) => onChange({ per: next ?? per })}
      />
      <Choice
        label={texts.perUnit}
        value={perUnit}
        options={(["g", "mL"] as const).map((unit) => ({ value: unit, label: unit }))}
        onChange={(next) => onChange({ perUnit: next })}
      />
      <NumberField
        context={context}
        label={perUnit === "mL" ? texts.gramsPerMl : texts.gramsPerMlOptional}
        unit="g"
        from={0.05}
        to={3}
        value={gramsPerMl}
        onChange={(next) => onChange({ gramsPerMl: next })}
      />
    </div>
  );
}

/** The figures on the label, as it prints them. */
export function Figures(props: DraftProps) {
  const { context, draft, onChange } = props;
  const texts = context.words.larder.label;
  const field = (key: PartKey) => (
    <NumberField
      key={key}
      context={context}
      label={texts.parts[key]}
      unit={key === "abv" ? "% vol" : "g"}
      from={0}
      to={key === "abv" ? 100 : MOST_GRAMS}
      value={draft.parts[key] ?? null}
      onChange={(value) => onChange({ parts: { ...draft.parts, [key]: value } })}
    />
  );
  const hasSugars = (draft.parts.sugars ?? 0) > 0 || draft.split === "each";
  return (
    <>
      <Basis {...props} />
      <div class="fields even">{PRINTED.map(field)}</div>
      <p class="quiet">{texts.saltHint}</p>
      <Check
        checked={draft.isFibreInside}
        onChange={(isFibreInside) => onChange({ isFibreInside })}
      >
        {texts.fibreInside}
      </Check>
      {(hasSugars || (draft.parts.polyols ?? 0) > 0) && <SugarKinds {...props} />}
      <details>
        <summary>{texts.rare}</summary>
        <div class="fields even">{SELDOM_PRINTED.map(field)}</div>
      </details>
    </>
  );
}
