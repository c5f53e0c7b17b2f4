import { useMemo, useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { Choice } from "../components/Choice";
import { NumberField } from "../components/NumberField";
import type { PaneContext } from "../view";
import type { NotebookEntry } from "./entry";
import { learnIngredient } from "./learnIngredient";
import { mixFromText } from "./mixText";
import { useOwnSheet } from "./useOwnSheet";

interface LearnIngredientProps {
  readonly context: PaneContext;
  /** Those with a measured freezing point, at least one. */
  readonly entries: readonly NotebookEntry[];
  readonly own: Matrix | null;
}

const USUAL_THERMOMETER_K = 0.1; // of a kitchen's digital thermometer that was checked in ice water; common practice

/** One measurement explained by one ingredient, as own ingredients to be taken or left. */
export function LearnIngredient({ context, entries, own }: LearnIngredientProps) {
  const { words, numbers } = context;
  const texts = words.notebook;
  const [line, setLine] = useState(entries.length - 1);
  const [asked, setAsked] = useState<string | null>(null);
  const [thermometerK, setThermometerK] = useState<number | null>(USUAL_THERMOMETER_K);
  const ownSheet = useOwnSheet(context, own);
  const entry = entries[line] ?? entries[0];
  const mix = useMemo(() => mixFromText(entry?.mix ?? ""), [entry]);
  const names = mix?.items.flatMap(([name]) => (typeof name === "string" ? [name] : [])) ?? [];
  const item = asked !== null && names.includes(asked) ? asked : null;
  const learnt = useMemo(() => {
    if (entry === undefined || entry.measuredC === null || mix === null || item === null)
      return null;
    const { measuredC, date } = entry;
    const measured = { ...mix, own, measuredC, thermometerK: thermometerK ?? USUAL_THERMOMETER_K };
    return learnIngredient(measured, item, texts.learntFrom(date));
  }, [entry, mix, item, own, thermometerK, texts]);
  return (
    <>
      <p>{texts.learnAbout}</p>
      <Choice
        label={texts.line}
        value={line}
        options={entries.map(({ date, recipe, measuredC }, at) => ({
          value: at,
          label: `${date}, ${recipe}, ${numbers.plain(measuredC ?? 0)} °C`,
        }))}
        onChange={setLine}
      />
      {mix === null && <p class="fault">{texts.noMix}</p>}
      <Choice
        label={texts.ingredient}
        value={item}
        none="–"
        options={names.map((value) => ({ value }))}
        onChange={setAsked}
      />
      <NumberField
        context={context}
        label={texts.thermometer}
        unit="K"
        from={0.001}
        to={5}
        value={thermometerK}
        onChange={setThermometerK}
      />
      {item !== null && learnt === null && <p class="fault">{texts.noFactor(item)}</p>}
      {learnt !== null && (
        <>
          <p>
            {texts.factor(
              learnt.item,
              learnt.uncertainty === null
                ? numbers.fixed(learnt.factor, 2)
                : numbers.withBand(learnt.factor, learnt.uncertainty, "").trim(),
            )}
          </p>
          <p class="quiet">{texts.factorBasis}</p>
          <button type="button" onClick={() => void ownSheet.write(learnt.rows)}>
            {texts.apply}
          </button>
        </>
      )}
      {ownSheet.outcome !== null && <p>{ownSheet.outcome}</p>}
    </>
  );
}
