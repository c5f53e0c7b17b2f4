import { useState } from "preact/hooks";
import { isProblem } from "../../src/foundation/problem";
import { NumberField } from "../components/NumberField";
import { askMix } from "../curves/askMix";
import type { BatchProps } from "./batchProps";

const AIRFLOWS = ["still", "fan", "blast", "brine"] as const;
const SHAPES = ["slab", "cylinder", "sphere"] as const;
const METHOD_FRACTION = 0.3; // stated for RIME.FREEZINGTIME
const FRIDGE_C = 4;
const FREEZER_C = -18; // a household freezer's nominal temperature, IEC 62552-1 (four stars)

/** How long it takes in this freezer, as the estimate it is. */
export function HoursPart({ context, mix }: BatchProps) {
  const { words, numbers } = context;
  const texts = words.batch.hours;
  const [thicknessMm, setThickness] = useState<number | null>(40);
  const [airC, setAir] = useState<number | null>(FREEZER_C);
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
      <div class="fields">
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
      <label class="field">
        <span>{texts.airflow}</span>
        <select
          value={airflow}
          onChange={(event) => setAirflow(event.currentTarget.value as typeof airflow)}
        >
          {AIRFLOWS.map((key) => (
            <option key={key} value={key}>
              {texts.airflows[key]}
            </option>
          ))}
        </select>
      </label>
      <label class="field">
        <span>{texts.shape}</span>
        <select
          value={shape}
          onChange={(event) => setShape(event.currentTarget.value as typeof shape)}
        >
          {SHAPES.map((key) => (
            <option key={key} value={key}>
              {texts.shapes[key]}
            </option>
          ))}
        </select>
      </label>
      {typeof answer === "number" && (
        <p>
          {texts.answer(
            numbers.fixed(answer, 1),
            numbers.fixed(answer * (1 - METHOD_FRACTION), 1),
            numbers.fixed(answer * (1 + METHOD_FRACTION), 1),
          )}
        </p>
      )}
      {isProblem(answer) && <p class="fault">{answer.message}</p>}
      <p class="quiet">{texts.household}</p>
    </details>
  );
}
