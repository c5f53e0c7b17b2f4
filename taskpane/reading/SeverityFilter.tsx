import type { Severity } from "../../src/audit/finding";
import type { Words } from "../words/words";

interface SeverityFilterProps {
  readonly words: Words;
  readonly counts: Readonly<Record<Severity, number>>;
  readonly hidden: ReadonlySet<Severity>;
  readonly onToggle: (severity: Severity) => void;
}

/** Which kinds of findings are shown; only where there is more than one kind. */
export function SeverityFilter({ words, counts, hidden, onToggle }: SeverityFilterProps) {
  const present = (["error", "warning", "note"] as const).filter((one) => counts[one] > 0);
  if (present.length < 2) return null;
  return (
    <div class="buttons" role="group" aria-label={words.readThrough.filter}>
      {present.map((severity) => (
        <button
          key={severity}
          type="button"
          class="small"
          aria-pressed={!hidden.has(severity)}
          onClick={() => onToggle(severity)}
        >
          {words.readThrough.severityNames[severity]}
        </button>
      ))}
    </div>
  );
}
