import type { Cell } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import type { WorksheetFunction } from "../../src/worksheet/worksheetFunction";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import type { Explanation } from "./explainCall";
import { valueText } from "./valueText";

interface AnswerProps {
  readonly context: PaneContext;
  readonly definition: WorksheetFunction;
  readonly explanation: Explanation;
  /** The answer for the recipe that is looked at; null when it is a block. */
  readonly one: Cell | null;
}

const WITHOUT_UNIT = new Set(["1", "text", "table", "fraction"]);

/** What the call gives, or the sentence with which it declines, and the ideal law beside it. */
export function Answer({ context, definition, explanation, one }: AnswerProps) {
  const { words, numbers } = context;
  const { answer, ideal } = explanation;
  const unit = WITHOUT_UNIT.has(definition.unit) ? "" : ` ${definition.unit}`;
  const inUnit = (value: number) =>
    ideal?.unit === "fraction"
      ? numbers.percent(value, 1)
      : `${numbers.fixed(value, 2)} ${ideal?.unit ?? ""}`;
  if (isProblem(one)) {
    return (
      <Notice tone="trouble">
        {words.why.refused} {words.said(one.message)}
      </Notice>
    );
  }
  return (
    <>
      <p>
        {words.why.answers}{" "}
        <strong>
          {one === null
            ? words.why.moreCells(answer.length, answer[0]?.length ?? 1)
            : `${words.said(valueText(one, context))}${typeof one === "number" ? unit : ""}`}
        </strong>
      </p>
      {ideal !== null && (
        <p class="why-ideal">{words.why.ideal(inUnit(ideal.ideal), inUnit(ideal.real))}</p>
      )}
    </>
  );
}
