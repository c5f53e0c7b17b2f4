import { useEffect, useMemo, useState } from "preact/hooks";
import type { PaneContext } from "../view";
import { findRecipe } from "./findRecipe";
import { nameKnower } from "./knownNames";
import type { ColumnChoice } from "./recognised";
import { useFollowedBlock, type FollowedBlock } from "./useFollowedBlock";
import { useOwnIngredients } from "./useOwnIngredients";

const selectedCell = (followed: FollowedBlock | null) =>
  followed?.active == null
    ? null
    : {
        row: followed.block.top + followed.active.row,
        column: followed.block.left + followed.active.column,
      };

/** The recipe under the selection, with own ingredients and the user's answers taken into account. */
export function useRecipe(context: PaneContext, active: boolean) {
  const block = useFollowedBlock(context, active);
  const own = useOwnIngredients(context);
  const [choices, setChoices] = useState<Readonly<Record<string, ColumnChoice | null>>>({});
  const isKnown = useMemo(() => nameKnower(own.cells), [own.cells]);
  const { followed } = block;
  const { refresh } = own;
  useEffect(() => {
    if (followed !== null) void refresh();
  }, [followed, refresh]);
  const place = followed === null ? "" : `${followed.block.sheet}!${followed.block.address}`;
  const choice = choices[place] ?? null;
  const recognition = useMemo(
    () =>
      followed === null || own.ranges === null
        ? null
        : findRecipe(followed.block, { isKnown, active: followed.active, choice }),
    [followed, own.ranges, isKnown, choice],
  );
  return {
    recognition,
    fault: block.fault ?? own.fault,
    own,
    /** The selected cell on its sheet; null until it was read. */
    selected: selectedCell(followed),
    isKept: block.isKept,
    keep: block.keep,
    hold: block.hold,
    readAgain: async () => {
      await own.lookAgain();
      await block.read();
    },
    answer: (next: ColumnChoice | null) => setChoices({ ...choices, [place]: next }),
    hasAnswered: choice !== null,
  };
}
