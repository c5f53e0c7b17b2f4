import { useEffect, useRef, useState } from "preact/hooks";
import { normalName } from "../../src/catalogue/normalName";
import type { PaneContext } from "../view";
import type { AimBody } from "./aim";
import type { AimFileFault } from "./aimFile";
import type { useOwnAims } from "./useOwnAims";

interface AimImportProps {
  readonly context: PaneContext;
  readonly aims: ReturnType<typeof useOwnAims>;
}

const SHOWN_LETTERS = 40;

function faultText(file: string, fault: AimFileFault, { words }: PaneContext): string {
  const { importFaults, must, nothing } = words.aims;
  if (fault.why !== "entry") return importFaults[fault.why](file);
  const value =
    fault.value === undefined ? nothing : JSON.stringify(fault.value).slice(0, SHOWN_LETTERS);
  return importFaults.entry(file, fault.entry, fault.field, value, must[fault.must]);
}

/** Takes targets from a file; before one of the same name is replaced, it is asked. */
export function AimImport({ context, aims }: AimImportProps) {
  const { words, announce } = context;
  const texts = words.aims;
  const [fault, setFault] = useState<string | null>(null);
  const [waiting, setWaiting] = useState<readonly AimBody[] | null>(null);
  const input = useRef<HTMLInputElement>(null);
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (waiting !== null) first.current?.focus();
  }, [waiting]);
  const isMine = ({ name }: AimBody) =>
    aims.own.some((own) => normalName(own.name) === normalName(name));
  const finish = (taken: readonly AimBody[] | null) => {
    setWaiting(null);
    input.current?.focus();
    if (taken !== null) void aims.takeIn(taken);
  };
  const read = async (file: File) => {
    const { readAimFile } = await import(/* webpackChunkName: "aims" */ "./aimFile");
    const found = readAimFile(await file.text());
    const sentence = "why" in found ? faultText(file.name, found, context) : null;
    setFault(sentence);
    if (sentence !== null) announce(sentence);
    if ("why" in found) return;
    if (found.some(isMine)) setWaiting(found);
    else finish(found);
  };
  return (
    <div
      onKeyDown={(event) => {
        if (event.key !== "Escape" || waiting === null) return;
        event.stopPropagation();
        finish(null);
      }}
    >
      <label class="field">
        <span>{texts.import}</span>
        <input
          ref={input}
          type="file"
          accept=".json,application/json"
          onChange={(event) => {
            const field = event.currentTarget;
            const file = field.files?.[0];
            if (file !== undefined) void read(file).finally(() => (field.value = ""));
          }}
        />
      </label>
      {fault !== null && <p class="fault">{fault}</p>}
      {waiting !== null && (
        <div class="insert" role="group" aria-label={texts.clashTitle}>
          <p>
            {texts.clash(
              waiting
                .filter(isMine)
                .map(({ name }) => name)
                .join(", "),
            )}
          </p>
          <div class="buttons">
            <button
              type="button"
              ref={first}
              onClick={() => finish(waiting.filter((aim) => !isMine(aim)))}
            >
              {texts.mine}
            </button>
            <button type="button" onClick={() => finish(waiting)}>
              {texts.theirs}
            </button>
            <button type="button" onClick={() => finish(null)}>
              {words.close}
            </button>
          </div>
        </div>
      )}
    </div>
  );
}
