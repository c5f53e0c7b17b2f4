import { useState } from "preact/hooks";
import type { Contents } from "../host";
import type { PaneContext } from "../view";
import { placeText } from "./useInsertion";
import { useInsertionPlace } from "./useInsertionPlace";
import "./insertPanel.css";

interface BlockInsertProps {
  readonly context: PaneContext;
  /** What the button says. */
  readonly label: string;
  /** Rectangular, at least one cell. */
  readonly contents: Contents;
  /** Told when the panel opens and closes: meanwhile the recipe has to stay while the selection moves. */
  readonly onOpen?: (open: boolean) => void;
}

/** Writes rows of cells from the selected cell on, into empty cells only, after showing where that is. */
export function BlockInsert({ context, label, contents, onOpen }: BlockInsertProps) {
  const [open, setOpen] = useState(false);
  const turn = (next: boolean) => {
    setOpen(next);
    onOpen?.(next);
  };
  return (
    <>
      <button type="button" class="small" aria-expanded={open} onClick={() => turn(!open)}>
        {label}
      </button>
      {open && <BlockPanel context={context} contents={contents} onClose={() => turn(false)} />}
    </>
  );
}

interface BlockPanelProps extends Pick<BlockInsertProps, "context" | "contents"> {
  readonly onClose: () => void;
}

function BlockPanel({ context, contents, onClose }: BlockPanelProps) {
  const { words, host, announce } = context;
  const columnCount = Math.max(1, ...contents.map((row) => row.length));
  const { place, fault, look, run } = useInsertionPlace(context, contents.length, columnCount);
  const [outcome, setOutcome] = useState<string | null>(null);
  const isFilled = place?.formulas.some((row) => row.some((cell) => cell !== "")) ?? false;
  const write = () =>
    run(async () => {
      if (host === null || place === null) return;
      const answer = await host.insert(place, contents);
      const key = { written: "done", filled: "filled", "changed meanwhile": "changed" } as const;
      const sentence = words.insert[key[answer]](placeText(place));
      setOutcome(sentence);
      announce(sentence);
      await look();
    });
  return (
    <div
      class="insert"
      role="group"
      aria-label={words.insert.block}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        onClose();
      }}
    >
      <p>{words.insert.blockAbout}</p>
      {place !== null && (
        <p>
          <strong>{placeText(place)}</strong>{" "}
          {isFilled ? words.insert.blockFilled : words.insert.empty}
        </p>
      )}
      {(fault ?? outcome) !== null && <p class="insert-outcome">{fault ?? outcome}</p>}
      <div class="buttons">
        <button
          type="button"
          class="primary"
          disabled={place === null || isFilled}
          onClick={() => void write()}
        >
          {words.insert.write}
        </button>
        <button type="button" onClick={onClose}>
          {words.close}
        </button>
      </div>
    </div>
  );
}
