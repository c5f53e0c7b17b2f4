import { useState } from "preact/hooks";
import { useHostTask } from "../components/useHostTask";
import type { SpreadsheetHost } from "../host";
import type { PaneContext } from "../view";
import type { Stored } from "./storeRows";

interface KeepRowsProps {
  readonly context: PaneContext;
  readonly texts: { readonly about: string; readonly aboutUpdate: string };
  /** The sheet that keeps them; null when there is none. */
  readonly sheet: string | null;
  readonly isStored: boolean;
  readonly store: (host: SpreadsheetHost) => Promise<Stored>;
  readonly onStored: (sheet: string) => void;
}

/** What was said and is not kept in the workbook yet: a sentence and the button that keeps it. */
export function KeepRows(props: KeepRowsProps) {
  const { context, texts, sheet, isStored, store, onStored } = props;
  const { host, words, announce } = context;
  const { keep } = words.readThrough;
  const { fault, run } = useHostTask(context);
  const [told, setTold] = useState<string | null>(null);
  const sentenceOf = ({ outcome, sheet: name }: Stored): string =>
    ({
      added: keep.added,
      updated: keep.updated,
      "changed meanwhile": keep.changed,
      "not ours": keep.notOurs,
    })[outcome](name);
  const onClick = () =>
    run(async () => {
      if (host === null) return;
      const stored = await store(host);
      if (stored.outcome === "added" || stored.outcome === "updated") onStored(stored.sheet);
      setTold(sentenceOf(stored));
      announce(sentenceOf(stored));
    });
  const said = fault ?? told;
  return (
    <>
      {!isStored && (
        <>
          <p class="quiet">{sheet === null ? texts.about : texts.aboutUpdate}</p>
          <div class="buttons">
            <button type="button" class="small" onClick={() => void onClick()}>
              {sheet === null ? keep.add : keep.update(sheet)}
            </button>
          </div>
        </>
      )}
      {said !== null && <p>{said}</p>}
    </>
  );
}
