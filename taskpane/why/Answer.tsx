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
}

const WITHOUT_UNIT = new Set(["1", "text", "table", "fraction"]);

/** What the call gives, or the sentence with which it declines, and the ideal law beside it. */
export function Answer({ context, definition, explanation }: AnswerProps) {
  const { words, numbers } = context;
  const { answer, ideal } = explanation;
  const [first = null] = answer[0] ?? [];
  const columns = answer[0]?.length ?? 1;
  const isBlock = answer.length > 1 || columns > 1;
  const unit = WITHOUT_UNIT.has(definition.unit) ? "" : ` ${definition.unit}`;
  const inUnit = (value: number) =>
    ideal?.unit === "fraction"
      ? numbers.percent(value, 1)
      : `${numbers.fixed(value, 2)} ${ideal?.unit ?? ""}`;
  if (!isBlock && isProblem(first)) {
    return (
      <Notice tone="trouble">
        {words.why.refused} {words.said(first.message)}
      </Notice>
    );
  }
  return (
    <>
      <p>
        {words.why.answers}{" "}
        <strong>
          {isBlock
            ? words.why.moreCells(answer.length, columns)
            : `${words.said(valueText(first, context))}${typeof first === "number" ? unit : ""}`}
        </strong>
      </p>
      {ideal !== null && (
        <p class="why-ideal">{words.why.ideal(inUnit(ideal.ideal), inUnit(ideal.real))}</p>
      )}
    </>
  );
}
