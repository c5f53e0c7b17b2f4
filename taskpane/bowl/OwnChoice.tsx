import type { CellBlock } from "../host";
import { useMemo } from "preact/hooks";
import { Notice } from "../components/Notice";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import { ownTrouble } from "./knownNames";
import type { OwnRange } from "./ownIngredients";
import type { useOwnIngredients } from "./useOwnIngredients";

interface OwnChoiceProps {
  readonly context: PaneContext;
  readonly own: ReturnType<typeof useOwnIngredients>;
  /** True where a recipe is shown, which says itself what is wrong with them. */
  readonly hasRecipe: boolean;
}

const textOf = ({ sheet, address }: OwnRange | CellBlock): string => `${sheet}!${address}`;

/** Which range of own ingredients counts: one that was found, the selected one, or none. */
export function OwnChoice({ context, own, hasRecipe }: OwnChoiceProps) {
  const { words, host } = context;
  const { fault, run } = useHostTask(context);
  const trouble = useMemo(() => (hasRecipe ? null : ownTrouble(own.cells)), [hasRecipe, own.cells]);
  const { ranges, chosen, gone, choose } = own;
  if (ranges === null) return null;
  const all =
    chosen === null || ranges.some((range) => textOf(range) === textOf(chosen))
      ? ranges
      : [...ranges, chosen];
  const useSelection = () =>
    run(async () => {
      if (host === null) return;
      const { around } = await host.readSelection();
      choose({ sheet: around.sheet, address: around.address });
    });
  return (
    <div class="own-choice">
      {trouble !== null && <Notice tone="trouble">{words.said(trouble)}</Notice>}
      {gone !== null && <Notice tone="warning">{words.own.gone(gone, chosen)}</Notice>}
      <label class="field">
        <span>{words.own.label}</span>
        <select
          value={chosen === null ? "" : textOf(chosen)}
          onChange={(event) =>
            choose(all.find((range) => textOf(range) === event.currentTarget.value) ?? null)
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
