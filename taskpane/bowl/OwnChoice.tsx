import type { CellBlock } from "../host";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import type { OwnRange } from "./ownIngredients";
import { sameRange, type useOwnIngredients } from "./useOwnIngredients";

interface OwnChoiceProps {
  readonly context: PaneContext;
  readonly own: ReturnType<typeof useOwnIngredients>;
}

const textOf = ({ sheet, address }: OwnRange | CellBlock): string => `${sheet}!${address}`;

/** Which range of own ingredients counts: one that was found, the selected one, or none. */
export function OwnChoice({ context, own }: OwnChoiceProps) {
  const { words, host } = context;
  const { fault, run } = useHostTask(context);
  const { ranges, chosen, choose } = own;
  if (ranges === null) return null;
  const all =
    chosen === null || ranges.some((range) => sameRange(range, chosen))
      ? ranges
      : [...ranges, chosen];
  const useSelection = () =>
    run(async () => {
      if (host === null) return;
      const { around } = await host.readSelection();
      await choose({ sheet: around.sheet, address: around.address });
    });
  return (
    <div class="own-choice">
      <label class="field">
        <span>{words.own.label}</span>
        <select
          value={chosen === null ? "" : textOf(chosen)}
          onChange={(event) =>
            void choose(all.find((range) => textOf(range) === event.currentTarget.value) ?? null)
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
