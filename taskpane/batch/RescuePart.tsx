import { useMemo, useState } from "preact/hooks";
import { GramFields } from "../components/GramFields";
import { askMix, firstNumber } from "../bowl/askMix";
import type { BatchProps } from "./batchProps";
import { restoreProportions } from "./rescue";
import { useSingleAdditions } from "./useSingleAdditions";

/** What really is in the bowl, and what to add to it. */
export function RescuePart({ context, mix, rows }: BatchProps) {
  const { words, numbers } = context;
  const texts = words.batch.rescue;
  const [changed, setChanged] = useState<Readonly<Record<string, number>>>({});
  const inBowl = rows.map(({ name, grams }) => ({ name, grams: changed[name] ?? grams }));
  const { factor, additions } = restoreProportions(rows, inBowl);
  const pointC = useMemo(() => firstNumber(askMix(mix, "FREEZINGPOINT")), [mix]);
  const { ones, done } = useSingleAdditions(additions.length === 0 ? [] : inBowl, pointC, mix.own);
  const list = (parts: readonly { readonly name: string; readonly grams: number }[]) => (
    <ul class="additions">
      {parts.map(({ name, grams }) => (
        <li key={name}>{texts.add(numbers.fixed(grams, 1), name)}</li>
      ))}
    </ul>
  );
  return (
    <details>
      <summary>{texts.title}</summary>
      <p>{texts.about}</p>
      <GramFields
        context={context}
        amounts={inBowl}
        mostGrams={1e6}
        onChange={(name, grams) => setChanged({ ...changed, [name]: grams ?? 0 })}
      />
      {additions.length === 0 ? (
        <p>{texts.right}</p>
      ) : (
        <>
          <p>{texts.restore(numbers.plain(factor))}</p>
          {list(additions)}
          {pointC !== null && (
            <>
              {ones === null ? (
                <p class="quiet">{`${done} / ${rows.length} …`}</p>
              ) : (
                <>
                  <p>{ones.length > 0 ? texts.one(numbers.fixed(pointC, 2)) : texts.noOne}</p>
                  {list(ones)}
                </>
              )}
            </>
          )}
        </>
      )}
    </details>
  );
}
