import { bibliography } from "../../src/foundation/bibliography";
import { NAMESPACE } from "../../src/worksheet/namespace";
import { worksheetFunctions } from "../../src/worksheet/functions";
import type { PaneContext } from "../view";
import type { Words } from "../words/words";

/** What each function answers here, in the pane's words. */
const usedFor = ({ freezingPoint, cold, sweetness, solids }: Words): Record<string, string> => ({
  FREEZINGPOINT: freezingPoint,
  ICEFRACTION: cold.iceOfWater,
  UNFROZENSOLIDS: cold.unfrozenSolids,
  SWEETNESS: sweetness,
  COMPONENT: solids,
  UNCERTAINTY: "±",
});

/** Where the numbers come from: the function a cell would call for each, and what it rests on. */
export function Sources({ context }: { readonly context: PaneContext }) {
  const labels = usedFor(context.words);
  const used = worksheetFunctions.filter(({ name }) => name in labels);
  return (
    <details class="sources">
      <summary>{context.words.whereFrom}</summary>
      <p class="quiet">{context.words.bandFrom}</p>
      <ul>
        {used.map(({ name, sources }) => (
          <li key={name}>
            <code>
              {NAMESPACE}.{name}
            </code>{" "}
            {labels[name]}
            <p class="figure-why">{sources.map((key) => bibliography[key]).join(" · ")}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}
