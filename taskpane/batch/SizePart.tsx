import { useState } from "preact/hooks";
import { Choice } from "../components/Choice";
import { NumberField } from "../components/NumberField";
import { BlockInsert } from "../insert/BlockInsert";
import { AmountTable } from "../components/AmountTable";
import type { BatchProps } from "./batchProps";
import { HEADROOM_FRACTION, scaleBatch, type BatchSize } from "./scale";

type Kind = BatchSize["kind"];
const KINDS: readonly Kind[] = ["grams", "pieces", "moulds"];

/** The recipe scaled to a mass, to a number of pieces, or to moulds of a volume. */
export function SizePart({ context, mix, rows, onHold }: BatchProps) {
  const { words, numbers } = context;
  const texts = words.batch.size;
  const total = rows.reduce((sum, { grams }) => sum + grams, 0);
  const [kind, setKind] = useState<Kind>("grams");
  const [grams, setGrams] = useState<number | null>(Math.round(total));
  const [pieces, setPieces] = useState<number | null>(10);
  const [each, setEach] = useState<number | null>(80);
  const [overrun, setOverrun] = useState<number | null>(0);
  const size: BatchSize | null =
    kind === "grams"
      ? grams === null
        ? null
        : { kind, grams }
      : pieces === null || each === null
        ? null
        : kind === "pieces"
          ? { kind, pieces, gramsEach: each }
          : { kind, pieces, millilitresEach: each, overrunFraction: (overrun ?? 0) / 100 };
  const scaled = size === null ? null : scaleBatch(mix, mix.own, size);
  const field = { context, from: 0.1, to: 1e6 };
  return (
    <details>
      <summary>{texts.title}</summary>
      <Choice
        label={texts.by}
        value={kind}
        options={KINDS.map((key) => ({ value: key, label: texts[key] }))}
        onChange={setKind}
      />
      <div class="fields even">
        {kind === "grams" ? (
          <NumberField {...field} label={texts.total} unit="g" value={grams} onChange={setGrams} />
        ) : (
          <>
            <NumberField
              {...field}
              from={1}
              label={texts.count}
              unit=""
              value={pieces}
              onChange={setPieces}
            />
            <NumberField
              {...field}
              label={kind === "pieces" ? texts.gramsEach : texts.millilitresEach}
              unit={kind === "pieces" ? "g" : "mL"}
              value={each}
              onChange={setEach}
            />
          </>
        )}
        {kind === "moulds" && (
          <NumberField
            context={context}
            from={0}
            to={150}
            label={texts.overrun}
            unit="%"
            value={overrun}
            onChange={setOverrun}
          />
        )}
      </div>
      {kind === "moulds" && (
        <p class="quiet">
          {scaled === null && size !== null
            ? texts.noDensity
            : texts.headroom(numbers.percent(HEADROOM_FRACTION))}
        </p>
      )}
      {scaled !== null && (
        <>
          <p>{texts.result(numbers.fixed(scaled.totalGrams, 0), numbers.plain(scaled.factor))}</p>
          <AmountTable
            head={[texts.item, texts.before, texts.after]}
            rows={scaled.rows.map(({ name, before, grams: after }) => [
              name,
              numbers.fixed(before, 1),
              numbers.fixed(after, 1),
            ])}
          />
          <BlockInsert
            context={context}
            label={texts.insert}
            onOpen={onHold}
            contents={[
              [texts.item, "g"],
              ...scaled.rows.map(({ name, grams: after }) => [name, Number(after.toFixed(1))]),
            ]}
          />
        </>
      )}
    </details>
  );
}
