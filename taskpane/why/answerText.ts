import type { Cell } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import type { WorksheetFunction } from "../../src/worksheet/worksheetFunction";
import type { PaneContext } from "../view";
import type { Explanation } from "./explainCall";
import { valueText } from "./valueText";

const WITHOUT_UNIT = new Set(["1", "text", "table", "fraction"]);

/** A call's answer for the recipe that is looked at with its unit, its refusal, or the size of a block. */
export function answerText(
  { answer }: Pick<Explanation, "answer">,
  one: Cell | null,
  { unit }: Pick<WorksheetFunction, "unit">,
  context: PaneContext,
): string {
  const { words } = context;
  if (one === null) return words.why.moreCells(answer.length, answer[0]?.length ?? 1);
  const text = isProblem(one) ? words.said(one.message) : words.said(valueText(one, context));
  return typeof one === "number" && !WITHOUT_UNIT.has(unit) ? `${text}\u202f${unit}` : text;
}
