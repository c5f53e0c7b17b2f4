import { useEffect, useMemo, useState } from "preact/hooks";
import { cellName } from "../../src/workbook/address";
import { useFollowedBlock, type FollowedBlock } from "../bowl/useFollowedBlock";
import { useHostTask } from "../components/useHostTask";
import type { BlockValue } from "../host";
import type { PaneContext } from "../view";
import { ownCalls, type OwnCall } from "./formulaCalls";
import { resolveCall, type ResolvedCall } from "./resolveCall";

/** The selected cell, and the calls of our functions in its formula. */
export interface ExplainedCell {
  readonly sheet: string;
  readonly cell: string;
  readonly row: number;
  readonly formula: string;
  readonly shown: BlockValue;
  readonly calls: readonly OwnCall[];
}

function explainedCell(followed: FollowedBlock | null): ExplainedCell | null {
  if (followed?.active == null) return null;
  const { block, active } = followed;
  const { row, column } = active;
  const formula = String(block.formulas[row]?.[column] ?? "");
  return {
    sheet: block.sheet,
    cell: cellName(block.top + row, block.left + column),
    row: block.top + row,
    formula,
    shown: block.values[row]?.[column] ?? "",
    calls: formula.startsWith("=") ? ownCalls(formula) : [],
  };
}

/** The cell under the selection, the call chosen in it, and that call's arguments as read from the sheet. */
export function useExplanation(context: PaneContext, active: boolean) {
  const { host } = context;
  const block = useFollowedBlock(context, active);
  const { fault, run } = useHostTask(context);
  const [resolved, setResolved] = useState<{ call: OwnCall; found: ResolvedCall } | null>(null);
  const [choice, setChoice] = useState<{ cell: ExplainedCell; at: number } | null>(null);
  const { followed } = block;
  const cell = useMemo(() => explainedCell(followed), [followed]);
  // Another cell begins with its first call.
  const chosen = choice !== null && choice.cell === cell ? choice.at : 0;
  const call = cell?.calls[chosen];
  useEffect(() => {
    if (host === null || cell === null || call === undefined) return;
    let isCurrent = true;
    void run(async () => {
      const found = await resolveCall(call, { sheet: cell.sheet, row: cell.row }, host);
      if (isCurrent) setResolved({ call, found });
    });
    return () => {
      isCurrent = false;
    };
  }, [host, cell, call, run]);
  return {
    cell,
    call: call ?? null,
    chosen,
    choose: (at: number) => setChoice(cell === null ? null : { cell, at }),
    found: resolved !== null && resolved.call === call ? resolved.found : null,
    fault: block.fault ?? fault,
  };
}
