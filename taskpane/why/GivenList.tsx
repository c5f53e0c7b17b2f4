import type { Cell, Matrix } from "../../src/foundation/cell";
import type { WorksheetFunction } from "../../src/worksheet/worksheetFunction";
import type { PaneContext } from "../view";
import type { OwnCall } from "./formulaCalls";
import { valueText } from "./valueText";

interface GivenListProps {
  readonly context: PaneContext;
  readonly definition: WorksheetFunction;
  readonly call: OwnCall;
  readonly args: readonly (Cell | Matrix)[];
}

/** What each argument of the call stands for, and what was found there. */
export function GivenList({ context, definition, call, args }: GivenListProps) {
  const { words } = context;
  return (
    <details>
      <summary>{words.why.arguments}</summary>
      <dl class="why-given">
        {definition.parameters.map(({ name, description }, at) => {
          const given = call.args[at];
          const place = given?.kind === "reference" ? `${given.text}: ` : "";
          return (
            <div key={name}>
              <dt>{name}</dt>
              <dd>
                {place}
                {given === undefined ? words.why.blank : valueText(args[at] ?? null, context)}
                <span class="quiet"> {words.argument(definition.name, name, description)}</span>
              </dd>
            </div>
          );
        })}
      </dl>
    </details>
  );
}
