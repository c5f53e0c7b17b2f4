import type { InsertOffer } from "../insert/insertOffer";
import { InsertPanel } from "../insert/InsertPanel";
import type { PaneContext } from "../view";
import { together } from "../words/together";
import type { FigureLine } from "./figureLine";
import { figureText } from "./figureText";
import { whyText } from "./whyText";

interface FigureRowProps {
  readonly context: PaneContext;
  readonly line: FigureLine;
  readonly subject: string;
  /** False where the list says once why all of its lines may be believed. */
  readonly showsWhy: boolean;
  readonly inserting: boolean;
  readonly onInsert: (open: boolean) => void;
}

function offersOf({ cell, value }: FigureLine, { words, numbers }: PaneContext): InsertOffer[] {
  const asValue: InsertOffer = { label: words.insert.value, content: value };
  if (cell === null) return [asValue];
  const shows = typeof cell.shows === "number" ? numbers.plain(cell.shows) : cell.shows;
  return [{ label: words.insert.formula, content: cell.formula, shows }, asValue];
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
  const { value, band } = figureText(line, numbers);
  return (
    <li class="figure">
      <div class="figure-top">
        <div>
          <span class="figure-label">{line.label}</span>
          <span class="figure-value">
            {value}
            <span class="figure-unit">
              {"\u00a0"}
              {together(band, line.unit)}
            </span>
          </span>
        </div>
        {host !== null && (line.cell !== null || typeof line.value === "number") && (
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
