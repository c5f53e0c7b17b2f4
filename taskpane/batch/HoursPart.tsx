import { useState } from "preact/hooks";
import { isProblem } from "../../src/foundation/problem";
import { HOUSEHOLD_FREEZER_C } from "../bowl/usualTemperatures";
import { Choice } from "../components/Choice";
import { NumberField } from "../components/NumberField";
import { askMix } from "../bowl/askMix";
import type { BatchProps } from "./batchProps";

const AIRFLOWS = ["still", "fan", "blast", "brine"] as const;
const SHAPES = ["slab", "cylinder", "sphere"] as const;
const METHOD_FRACTION = 0.3; // stated for RIME.FREEZINGTIME
const FRIDGE_C = 4;

/** How long it takes in this freezer, as the estimate it is. */
export function HoursPart({ context, mix }: BatchProps) {
  const { words, numbers } = context;
  const texts = words.batch.hours;
  const [thicknessMm, setThickness] = useState<number | null>(40);
  const [airC, setAir] = useState<number | null>(HOUSEHOLD_FREEZER_C);
  const [startC, setStart] = useState<number | null>(FRIDGE_C);
  const [airflow, setAirflow] = useState<(typeof AIRFLOWS)[number]>("still");
  const [shape, setShape] = useState<(typeof SHAPES)[number]>("slab");
  const args = [thicknessMm, airC, startC, null, airflow, shape];
  const answer =
    thicknessMm === null || airC === null || startC === null
      ? null
      : askMix(mix, "FREEZINGTIME", ...args)[0]?.[0];
  const range = { context, from: -60, to: 40, unit: "°C" };
  return (
    <details>
      <summary>{texts.title}</summary>
      <div class="fields even">
        <NumberField
          context={context}
          from={1}
          to={1000}
          unit="mm"
          label={texts.thickness}
          value={thicknessMm}
          onChange={setThickness}
        />
        <NumberField {...range} label={texts.air} value={airC} onChange={setAir} />
        <NumberField {...range} label={texts.start} value={startC} onChange={setStart} />
      </div>
      <Choice
        label={texts.airflow}
        value={airflow}
        options={AIRFLOWS.map((key) => ({ value: key, label: texts.airflows[key] }))}
        onChange={setAirflow}
      />
      <Choice
        label={texts.shape}
        value={shape}
        options={SHAPES.map((key) => ({ value: key, label: texts.shapes[key] }))}
        onChange={setShape}
      />
      {typeof answer === "number" && (
        <p>
          {texts.answer(
            numbers.fixed(answer, 1),
            numbers.fixed(answer * (1 - METHOD_FRACTION), 1),
            numbers.fixed(answer * (1 + METHOD_FRACTION), 1),
          )}
        </p>
      )}
      {isProblem(answer) && <p class="fault">{words.said(answer.message)}</p>}
      <p class="quiet">{texts.household}</p>
    </details>
  );
}
