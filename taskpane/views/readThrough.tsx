import { useState } from "preact/hooks";
import { Notice } from "../components/Notice";
import { storedAcceptances } from "../reading/acceptanceRows";
import { ReadReport } from "../reading/ReadReport";
import { useReading } from "../reading/useReading";
import { useCorrections } from "../reading/useCorrections";
import { useAcceptances } from "../reading/useAcceptances";
import type { View, ViewProps } from "../view";
import "../reading/reading.css";

/** Reads the whole workbook through and lists what is wrong, worst first, each with its way to the cell. */
function ReadThrough({ context }: ViewProps) {
  const { words, host } = context;
  const texts = words.readThrough;
  const [isStale, setStale] = useState(false);
  const corrections = useCorrections();
  const reading = useReading(context, corrections.onRead, ({ workbook }) => {
    acceptances.onRead(storedAcceptances(workbook));
    setStale(false);
  });
  const acceptances = useAcceptances(reading.reading?.report ?? null);
  const { progress, fault } = reading;
  if (host === null) return <Notice tone="note">{words.outsideReading}</Notice>;
  return (
    <div class="reading">
      <p>{texts.about}</p>
      <div class="buttons">
        <button
          type="button"
          class="primary"
          aria-disabled={progress !== null}
          onClick={() => void reading.start()}
        >
          {reading.reading === null ? texts.start : texts.again}
        </button>
        {progress !== null && (
          <button type="button" onClick={reading.cancel}>
            {texts.cancel}
          </button>
        )}
      </div>
      {progress !== null && <p class="quiet">{progress}</p>}
      {fault !== null && <Notice tone="trouble">{fault}</Notice>}
      {isStale && progress === null && <Notice tone="note">{texts.mend.stale}</Notice>}
      {reading.reading !== null && acceptances.shown !== null && (
        <div hidden={progress !== null}>
          <ReadReport
            context={context}
            reading={reading.reading}
            report={acceptances.shown}
            isReading={progress !== null}
            acceptances={acceptances}
            corrections={corrections}
            run={reading.run}
            onReadAgain={() => void reading.start()}
            onWritten={() => setStale(true)}
          />
        </div>
      )}
    </div>
  );
}

export const readThrough: View = { key: "readThrough", Content: ReadThrough };
