import type { Problem } from "../foundation/problem";
import type { WorksheetFunction } from "../worksheet/worksheetFunction";
import { refusalsOf } from "./refusals";

/** A problem as a cell shows it, with its sentence. */
export const problemText = ({ kind, message }: Problem): string =>
  `${kind === "badInput" ? "#VALUE!" : "#N/A"}: ${message}`;

/** What the function says when one value of its example is wrong. */
export const Mistakes = ({ definition }: { readonly definition: WorksheetFunction }) => (
  <section class="mistakes">
    <h2>What it says to mistakes</h2>
    <p class="quiet">In the example, with one value changed:</p>
    <dl>
      {refusalsOf(definition).map(({ parameter, given, problem }) => (
        <>
          <dt>
            <code>
              {parameter} = {given}
            </code>
          </dt>
          <dd>{problemText(problem)}</dd>
        </>
      ))}
    </dl>
  </section>
);
