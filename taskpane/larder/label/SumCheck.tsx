import type { Matrix } from "../../../src/foundation/cell";
import { callFunction } from "../../../src/worksheet/callFunction";
import { AmountTable } from "../../components/AmountTable";
import type { PaneContext } from "../../view";
import { effectPerGram } from "../freezingEffect";

interface SumCheckProps {
  readonly context: PaneContext;
  readonly name: string;
  readonly fault: string | null;
  readonly notes: readonly string[];
  /** The ingredient as own ingredients, header row first, once nothing is at fault. */
  readonly own: Matrix | null;
}

/** Whether the label adds up, what was taken for granted, and what the functions make of it. */
export function SumCheck({ context, name, fault, notes, own }: SumCheckProps) {
  const { words, numbers } = context;
  const texts = words.larder.label;
  const known: Readonly<Record<string, string>> = words.components;
  const [, ...parts] = own === null ? [] : callFunction("COMPOSITION", name, 100, own);
  const effect = own === null ? null : effectPerGram(name, own);
  return (
    <section>
      <h3>{texts.sum}</h3>
      {fault !== null && <p class="fault">{fault}</p>}
      {notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      {parts.length > 0 && (
        <AmountTable
          head={[texts.holds(name), "g"]}
          rows={parts.flatMap(([part, grams]) =>
            typeof part === "string" && typeof grams === "number" && part !== "total"
              ? [[known[part] ?? part, numbers.fixed(grams, 1)]]
              : [],
          )}
        />
      )}
      {effect !== null && (
        <p>{texts.effect(numbers.withBand(effect.shows, effect.uncertainty, "").trim())}</p>
      )}
    </section>
  );
}
