import { callFunction } from "../../src/worksheet/callFunction";
import { isProblem } from "../../src/foundation/problem";
import type { InsertOffer } from "../insert/insertOffer";
import { InsertPanel } from "../insert/InsertPanel";
import type { PaneContext } from "../view";
import type { FigureLine } from "./figureLine";
import { whyText } from "./whyText";
import { formulaText } from "./formulaText";

interface FigureRowProps {
  readonly context: PaneContext;
  readonly line: FigureLine;
  readonly subject: string;
  /** False where the list says once why all of its lines may be believed. */
  readonly showsWhy: boolean;
  readonly inserting: boolean;
  readonly onInsert: (open: boolean) => void;
}

/** The value a cell would get from the line's function, or null when the function does not give one. */
function cellValue({ call }: FigureLine): number | string | null {
  if (call === null) return null;
  const value = callFunction(call.name, ...call.args)[0]?.[0] ?? null;
  return isProblem(value) || typeof value === "boolean" ? null : value;
}

function offersOf(line: FigureLine, { words, numbers }: PaneContext): readonly InsertOffer[] {
  const fromFunction = cellValue(line);
  const offers: InsertOffer[] = [{ label: words.insert.value, content: line.value }];
  if (fromFunction !== null && line.call !== null) {
    const shows = typeof fromFunction === "number" ? numbers.plain(fromFunction) : fromFunction;
    const content = formulaText(line.call.name, line.call.args);
    offers.unshift({ label: words.insert.formula, content, shows });
  }
  return offers;
}

/** A value with its unit and uncertainty, its source beneath, and the way into a cell. */
export function FigureRow({
  context,
  line,
  subject,
  showsWhy,
  inserting,
  onInsert,
}: FigureRowProps) {
  const { words, numbers, host } = context;
  const value = typeof line.value === "number" ? numbers.plain(line.value) : line.value;
  // What holds by definition has no band.
  const band = line.uncertainty ? ` ± ${numbers.band(line.uncertainty)}` : "";
  return (
    <li class="figure">
      <div class="figure-top">
        <div>
          <span class="figure-label">{line.label}</span>
          <span class="figure-value">
            {value}
            <span class="figure-unit">
              {band} {line.unit}
            </span>
          </span>
        </div>
        {host !== null && (
          <button
            type="button"
            class="small"
            aria-expanded={inserting}
            aria-label={words.insert.openFor(line.label)}
            onClick={() => onInsert(!inserting)}
          >
            {words.insert.open}
          </button>
        )}
      </div>
      {showsWhy && <p class="figure-why">{whyText(line, words)}</p>}
      {inserting && (
        <InsertPanel
          context={context}
          title={`${subject}, ${line.label}`}
          offers={offersOf(line, context)}
          onClose={() => onInsert(false)}
        />
      )}
    </li>
  );
}
