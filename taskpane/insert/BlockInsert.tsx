import { useState } from "preact/hooks";
import { FormButtons } from "../components/FormButtons";
import { Unfold } from "../components/Unfold";
import type { Contents } from "../host";
import { asText } from "../office/cellContent";
import type { PaneContext } from "../view";
import { placeText } from "./useInsertion";
import { useInsertionPlace } from "./useInsertionPlace";

interface BlockInsertProps {
  readonly context: PaneContext;
  /** What the button says. */
  readonly label: string;
  /** Rectangular, at least one cell; texts stay texts, none is a formula. */
  readonly contents: Contents;
  /** Told when the panel opens and closes: meanwhile the recipe has to stay while the selection moves. */
  readonly onOpen?: (open: boolean) => void;
}

/** Writes rows of cells from the selected cell on, into empty cells only, after showing where that is. */
export function BlockInsert({ context, label, contents, onOpen }: BlockInsertProps) {
  return (
    <Unfold
      label={label}
      title={context.words.insert.block}
      {...(onOpen !== undefined && { onOpen })}
    >
      {(close) => <BlockPanel context={context} contents={contents} onClose={close} />}
    </Unfold>
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
  const isReady = place !== null && !isFilled;
  const write = () =>
    run(async () => {
      if (host === null || !isReady) return;
      const written = contents.map((row) =>
        row.map((cell) => (typeof cell === "string" && cell !== "" ? asText(cell) : cell)),
      );
      const answer = await host.insert(place, written);
      const key = { written: "done", filled: "filled", "changed meanwhile": "changed" } as const;
      const sentence = words.insert[key[answer]](placeText(place));
      setOutcome(sentence);
      announce(sentence);
      await look();
    });
  return (
    <>
      <p>{words.insert.blockAbout}</p>
      {place !== null && (
        <p>
          <strong>{placeText(place)}</strong>{" "}
          {isFilled ? words.insert.blockFilled : words.insert.empty}
        </p>
      )}
      {(fault ?? outcome) !== null && <p class="insert-outcome">{fault ?? outcome}</p>}
      <FormButtons
        label={words.insert.write}
        closeLabel={words.close}
        isReady={isReady}
        onDo={() => void write()}
        onClose={onClose}
      />
    </>
  );
}
