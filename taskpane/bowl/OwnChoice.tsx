import type { CellBlock } from "../host";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import type { OwnRange } from "./ownIngredients";
import { sameRange } from "./useOwnIngredients";

interface OwnChoiceProps {
  readonly context: PaneContext;
  readonly ranges: readonly OwnRange[];
  readonly chosen: OwnRange | null;
  readonly onChoose: (range: OwnRange | null) => Promise<void>;
}

const textOf = ({ sheet, address }: OwnRange | CellBlock): string => `${sheet}!${address}`;

/** Which range of own ingredients counts: one that was found, the selected one, or none. */
export function OwnChoice({ context, ranges, chosen, onChoose }: OwnChoiceProps) {
  const { words, host } = context;
  const { fault, run } = useHostTask(context);
  const all =
    chosen === null || ranges.some((range) => sameRange(range, chosen))
      ? ranges
      : [...ranges, chosen];
  const useSelection = () =>
    run(async () => {
      if (host === null) return;
      const { around } = await host.readSelection();
      await onChoose({ sheet: around.sheet, address: around.address });
    });
  return (
    <div class="own-choice">
      <label class="field">
        <span>{words.own.label}</span>
        <select
          value={chosen === null ? "" : textOf(chosen)}
          onChange={(event) =>
            void onChoose(all.find((range) => textOf(range) === event.currentTarget.value) ?? null)
          }
        >
          <option value="">{words.own.none}</option>
          {all.map((range) => (
            <option key={textOf(range)} value={textOf(range)}>
              {textOf(range)}
            </option>
          ))}
        </select>
      </label>
      <button type="button" class="small" onClick={() => void useSelection()}>
        {words.own.useSelection}
      </button>
      {fault !== null && <p class="fault">{fault}</p>}
    </div>
  );
}
