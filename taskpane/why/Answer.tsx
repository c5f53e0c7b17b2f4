import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import type { Explanation } from "./explainCall";

interface AnswerProps {
  readonly context: PaneContext;
  readonly explanation: Explanation;
  /** The answer in words, and whether it is a refusal. */
  readonly text: string;
  readonly isRefused: boolean;
}

/** What the call gives, or the sentence with which it declines, and the ideal law beside it. */
export function Answer({ context, explanation, text, isRefused }: AnswerProps) {
  const { words, numbers } = context;
  const { ideal } = explanation;
  const inUnit = (value: number) =>
    ideal?.unit === "fraction"
      ? numbers.percent(value, 1)
      : `${numbers.fixed(value, 2)} ${ideal?.unit ?? ""}`;
  if (isRefused) {
    return (
      <Notice tone="trouble">
        {words.why.refused} {text}
      </Notice>
    );
  }
  return (
    <>
      <p>
        {words.why.answers} <strong>{text}</strong>
      </p>
      {ideal !== null && (
        <p class="why-ideal">{words.why.ideal(inUnit(ideal.ideal), inUnit(ideal.real))}</p>
      )}
    </>
  );
}
