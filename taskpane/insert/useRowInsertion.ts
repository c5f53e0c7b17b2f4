import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import { cellName } from "../../src/workbook/address";
import { useRecipe } from "../bowl/useRecipe";
import { useHostTask } from "../components/useHostTask";
import type { SheetEdit, SpreadsheetHost } from "../host";
import type { PaneContext } from "../view";
import { rowPlace } from "./rowPlace";

/** The two cells a row would fill, with what stands in them now. */
export type RowCells = readonly Pick<SheetEdit, "sheet" | "cell" | "from">[];

type Recipe = ReturnType<typeof useRecipe>;

async function cellsFor(host: SpreadsheetHost, { recognition, selected }: Recipe) {
  if (recognition?.kind === "recipe" && selected !== null) {
    const place = rowPlace(recognition, selected);
    if (place === null) return null;
    const cells: RowCells = await Promise.all(
      place.cells.map(async (cell) => {
        const { sheet, formulas } = await host.read(recognition.sheet, cell);
        return { sheet, cell, from: formulas[0]?.[0] ?? "" };
      }),
    );
    return { cells, recipe: recognition, isBeyond: place.isBeyond };
  }
  const { sheet, top, left, formulas } = await host.cellsFromSelection(1, 2);
  const cells = [0, 1].map((along) => ({
    sheet,
    cell: cellName(top, left + along),
    from: formulas[0]?.[along] ?? "",
  }));
  return { cells, recipe: null, isBeyond: false };
}

export const placesText = (cells: readonly Pick<SheetEdit, "sheet" | "cell">[]): string =>
  cells.map(({ sheet, cell }) => `${sheet}!${cell}`).join(", ");

/** A name and an amount into the selected line of the recipe there, or side by side where there is none. */
export function useRowInsertion(context: PaneContext, active: boolean) {
  const { host, words, announce } = context;
  const recipe = useRecipe(context, active);
  const { recognition, selected } = recipe;
  const { fault, run } = useHostTask(context);
  const [found, setFound] = useState<Awaited<ReturnType<typeof cellsFor>>>(null);
  const [told, setTold] = useState<string | null>(null);
  const written = useRef<string | null>(null);
  const look = useCallback(
    () =>
      run(async () => {
        if (host === null || recognition === null) return;
        const next = await cellsFor(host, recipe);
        // What was just written is not to be written again, and what was said of it stays said.
        if (next !== null && placesText(next.cells) === written.current) return;
        written.current = null;
        setFound(next);
        setTold(null);
      }),
    // The rest of the recipe does not move the cells.
    [host, run, recognition, selected?.row, selected?.column],
  );
  useEffect(() => void look(), [look]);
  const write = (contents: readonly (string | number)[]) =>
    run(async () => {
      if (host === null || found === null) return;
      const edits = found.cells.map((cell, at): SheetEdit => ({ ...cell, to: contents[at] ?? "" }));
      setFound(null);
      written.current = placesText(edits);
      const left = await host.writeCells(edits);
      const done = edits.filter((edit) => !left.includes(edit));
      const sentences = [
        ...(done.length === 0 ? [] : [words.larder.row.done(placesText(done))]),
        ...(left.length === 0 ? [] : [words.larder.row.left(placesText(left))]),
      ];
      setTold(sentences.join(" "));
      announce(sentences.join(" "));
    });
  return { found, told, fault: recipe.fault ?? fault, isReading: recognition === null, write };
}
