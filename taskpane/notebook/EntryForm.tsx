import { useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { WITH_ICE, WITHOUT_ICE } from "../../src/catalogue/textureScale";
import type { RecipeInGrams } from "../bowl/toGrams";
import { HOUSEHOLD_FREEZER_C } from "../bowl/usualTemperatures";
import { Choice } from "../components/Choice";
import { NumberField } from "../components/NumberField";
import { TextField } from "../components/TextField";
import type { PaneContext } from "../view";
import type { NotebookEntry } from "./entry";
import { forecastOf } from "./forecast";
import { mixText } from "./mixText";

interface EntryFormProps {
  readonly context: PaneContext;
  readonly title: string;
  readonly recipe: RecipeInGrams;
  readonly own: Matrix | null;
  /** True when it was written: the form is then empty again. */
  readonly onWrite: (entry: NotebookEntry) => Promise<boolean>;
}

const FIRMNESS = [...WITH_ICE, ...WITHOUT_ICE].map(({ word }) => word);
const NOTHING = { measuredC: null, brix: null, freezerC: null, firmness: "", note: "" };

/** What was measured of a recipe, beside what was forecast, to be written down. */
export function EntryForm({ context, title, recipe, own, onWrite }: EntryFormProps) {
  const { words, numbers } = context;
  const texts = words.notebook;
  const [freezerSetC, setFreezerSetC] = useState<number | null>(HOUSEHOLD_FREEZER_C);
  const [found, setFound] =
    useState<Pick<NotebookEntry, "measuredC" | "brix" | "freezerC" | "firmness" | "note">>(NOTHING);
  const [isAsked, setIsAsked] = useState(false);
  const set = (change: Partial<typeof found>) => setFound({ ...found, ...change });
  const atC = found.freezerC ?? freezerSetC ?? HOUSEHOLD_FREEZER_C;
  const forecast = forecastOf(recipe, own, atC);
  const isEmpty = JSON.stringify(found) === JSON.stringify(NOTHING);
  const write = async () => {
    setIsAsked(isEmpty);
    if (isEmpty) return;
    const isWritten = await onWrite({
      ...found,
      freezerSetC,
      date: new Date().toISOString().slice(0, 10),
      recipe: title,
      mix: mixText(recipe),
      forecastC: forecast.pointC,
      forecastBandK: forecast.bandK,
      firmnessForecast: words.said(forecast.firmness),
    });
    if (isWritten) setFound(NOTHING);
  };
  const temperature = { context, unit: "°C", from: -60, to: 40 };
  return (
    <form
      class="notebook-form"
      onSubmit={(event) => {
        event.preventDefault();
        // What cannot be taken is not left out unsaid.
        const wrong = event.currentTarget.querySelector<HTMLElement>('[aria-invalid="true"]');
        if (wrong === null) void write();
        else wrong.focus();
      }}
    >
      <p>
        {forecast.pointC === null || forecast.bandK === null
          ? texts.noForecast
          : texts.forecast(numbers.withBand(forecast.pointC, forecast.bandK, "°C"))}{" "}
        {forecast.brix !== null && texts.brixForecast(numbers.fixed(forecast.brix, 1))}{" "}
        {forecast.firmness !== "" &&
          texts.firmnessForecast(words.said(forecast.firmness), numbers.plain(atC))}
      </p>
      <div class="fields even">
        <NumberField
          {...temperature}
          label={texts.measuredC}
          value={found.measuredC}
          onChange={(measuredC) => set({ measuredC })}
        />
        <NumberField
          context={context}
          unit="°Bx"
          from={0}
          to={95}
          label={texts.brix}
          value={found.brix}
          onChange={(brix) => set({ brix })}
        />
        <NumberField
          {...temperature}
          label={texts.freezerSetC}
          value={freezerSetC}
          onChange={setFreezerSetC}
        />
        <NumberField
          {...temperature}
          label={texts.freezerC}
          value={found.freezerC}
          onChange={(freezerC) => set({ freezerC })}
        />
      </div>
      <Choice
        label={texts.firmness}
        value={found.firmness}
        options={[
          { value: "", label: texts.notFelt },
          ...FIRMNESS.map((word) => {
            const label = words.said(word);
            return { value: label, label };
          }),
        ]}
        onChange={(firmness) => set({ firmness })}
      />
      <TextField label={texts.note} value={found.note} onChange={(note) => set({ note })} />
      {isAsked && isEmpty && <p class="fault">{texts.nothingToWrite}</p>}
      <div class="buttons">
        <button type="submit" class="primary">
          {texts.write}
        </button>
      </div>
    </form>
  );
}
