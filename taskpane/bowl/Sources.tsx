import { bibliography } from "../../src/foundation/bibliography";
import { NAMESPACE } from "../../src/worksheet/namespace";
import { worksheetFunctions } from "../../src/worksheet/functions";
import type { PaneContext } from "../view";

const USED = [
  "FREEZINGPOINT",
  "ICEFRACTION",
  "UNFROZENSOLIDS",
  "SWEETNESS",
  "COMPONENT",
  "UNCERTAINTY",
];

/** Where the numbers come from: the function a cell would call for each, and what it rests on. */
export function Sources({ context }: { readonly context: PaneContext }) {
  const used = worksheetFunctions.filter(({ name }) => USED.includes(name));
  return (
    <details class="sources">
      <summary>{context.words.whereFrom}</summary>
      <p class="quiet">{context.words.bandFrom}</p>
      <ul>
        {used.map(({ name, summary, sources }) => (
          <li key={name}>
            <code>
              {NAMESPACE}.{name}
            </code>{" "}
            {summary}
            <p class="figure-why">{sources.map((key) => bibliography[key]).join(" · ")}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}
