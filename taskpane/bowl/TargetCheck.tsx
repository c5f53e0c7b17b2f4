import type { Aim } from "../aims/aim";
import type { Cell } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";

interface TargetCheckProps {
  readonly context: PaneContext;
  readonly target: Aim;
  readonly check: Cell;
}

/** The answer of RIME.CHECK, and what the target asks for. */
export function TargetCheck({ context, target, check }: TargetCheckProps) {
  const { words, numbers } = context;
  const sentence = isProblem(check) ? check.message : String(check ?? words.noAnswer);
  const tone = isProblem(check) ? "trouble" : sentence.startsWith("meets") ? "good" : "warning";
  return (
    <div class="target-check" role="status">
      <Notice tone={tone}>
        <strong>{words.said(sentence)}</strong>
        <p class="figure-why">
          {words.target.asks[target.basis](
            numbers.percent(target.iceFrom),
            numbers.percent(target.iceTo),
            numbers.plain(target.temperatureC),
          )}{" "}
          {words.said(target.note)} · {words.obtained[target.obtained]}
        </p>
      </Notice>
    </div>
  );
}
