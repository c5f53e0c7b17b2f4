import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { EditTable } from "../components/EditTable";
import { FormButtons } from "../components/FormButtons";
import { NumberField } from "../components/NumberField";
import type { PaneContext } from "../view";
import { placesText, useRowInsertion } from "./useRowInsertion";
import "./insertPanel.css";

interface RowInsertProps {
  readonly context: PaneContext;
  /** False while another view is in front. */
  readonly active: boolean;
  readonly name: string;
  readonly onClose: () => void;
}

const MOST = 1_000_000;

/** An ingredient with its amount as a line of the recipe under the selection; into empty cells only. */
export function RowInsert({ context, active, name, onClose }: RowInsertProps) {
  const { words } = context;
  const texts = words.larder.row;
  const opener = useRef(document.activeElement);
  const panel = useRef<HTMLDivElement>(null);
  const [amount, setAmount] = useState<number | null>(null);
  const { found, told, fault, isReading, write } = useRowInsertion(context, active);
  useLayoutEffect(() => panel.current?.querySelector("input")?.focus(), []);
  const close = () => {
    if (opener.current instanceof HTMLElement) opener.current.focus();
    onClose();
  };
  const filled = found?.cells.filter(({ from }) => from !== "") ?? [];
  const isReady = found !== null && filled.length === 0 && amount !== null;
  const isMixed = found?.recipe?.unit === "mixed";
  return (
    <div
      class="insert"
      role="group"
      aria-label={texts.title(name)}
      ref={panel}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation(); // it closes the panel, not what lies around it
        close();
      }}
    >
      <NumberField
        context={context}
        label={texts.amount}
        unit={found?.recipe == null ? "g" : isMixed ? "" : found.recipe.unit}
        from={0}
        to={MOST}
        value={amount}
        onChange={setAmount}
      />
      {isReading && <p class="quiet">{words.reading}</p>}
      {found !== null && (
        <>
          <p>{found.recipe === null ? texts.plain : texts.inRecipe(found.recipe.title)}</p>
          <EditTable
            context={context}
            edits={found.cells.map((cell, at) => ({ ...cell, to: [name, amount ?? ""][at] ?? "" }))}
          />
          {filled.length > 0 && <p class="fault">{texts.filled(placesText(filled))}</p>}
          {isMixed && <p>{texts.unit}</p>}
          {found.isBeyond && filled.length === 0 && <p class="quiet">{texts.sums}</p>}
        </>
      )}
      {fault !== null && <p class="fault">{fault}</p>}
      {told !== null && <p class="insert-outcome">{told}</p>}
      <FormButtons
        label={words.insert.write}
        closeLabel={words.close}
        isReady={isReady}
        onDo={() => void write([name, amount ?? ""])}
        onClose={close}
      />
    </div>
  );
}
