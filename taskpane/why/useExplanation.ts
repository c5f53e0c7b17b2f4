import { useEffect, useState } from "preact/hooks";
import { cellName } from "../../src/workbook/address";
import { useFollowedBlock } from "../bowl/useFollowedBlock";
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

/** The cell under the selection, the call chosen in it, and that call's arguments as read from the sheet. */
export function useExplanation(context: PaneContext, active: boolean) {
  const { host } = context;
  const block = useFollowedBlock(context, active);
  const { fault, run } = useHostTask(context);
  const [chosen, setChosen] = useState(0);
  const [resolved, setResolved] = useState<{ call: OwnCall; found: ResolvedCall } | null>(null);
  const [cell, setCell] = useState<ExplainedCell | null>(null);
  const { followed } = block;
  useEffect(() => {
    if (followed?.active == null) return;
    const { row, column } = followed.active;
    const formula = String(followed.block.formulas[row]?.[column] ?? "");
    setChosen(0);
    setCell({
      sheet: followed.block.sheet,
      cell: cellName(followed.block.top + row, followed.block.left + column),
      row: followed.block.top + row,
      formula,
      shown: followed.block.values[row]?.[column] ?? "",
      calls: formula.startsWith("=") ? ownCalls(formula) : [],
    });
  }, [followed]);
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
    choose: setChosen,
    found: resolved !== null && resolved.call === call ? resolved.found : null,
    fault: block.fault ?? fault,
  };
}
