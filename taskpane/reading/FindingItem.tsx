import type { ComponentChildren } from "preact";
import type { Effect, Finding } from "../../src/audit/finding";
import type { PaneContext } from "../view";

interface FindingItemProps {
  readonly context: PaneContext;
  readonly finding: Finding;
  readonly onGo: (finding: Finding) => void;
  /** What can be done about it. */
  readonly children?: ComponentChildren;
}

/** "freezing point −1.4 → −2.3 °C": what the finding does to the answer. */
function effectText({ quantity, from, to, unit }: Effect, { numbers, words }: PaneContext): string {
  const text = (value: number | string) =>
    typeof value === "number" ? numbers.plain(value) : value;
  return words.readThrough.effect(words.said(quantity), text(from), `${text(to)} ${unit}`.trim());
}

/** One finding: where, what, what it does, what helps. */
export function FindingItem({ context, finding, onGo, children }: FindingItemProps) {
  const { words } = context;
  const place = `${finding.sheet}!${finding.cell}`;
  return (
    <li class={`finding finding-${finding.severity}`}>
      <button
        type="button"
        class="small finding-cell"
        aria-label={words.readThrough.goTo(place)}
        onClick={() => onGo(finding)}
      >
        {place}
      </button>
      <p>{words.said(finding.message)}</p>
      <p class="finding-effect">
        {finding.effect === null ? words.readThrough.noEffect : effectText(finding.effect, context)}
      </p>
      {finding.fix !== undefined && (
        <p class="quiet">{words.readThrough.fix(words.said(finding.fix))}</p>
      )}
      {children}
    </li>
  );
}
