import { useState } from "preact/hooks";
import type { PaneContext } from "../view";
import type { FigureLine } from "./figureLine";
import { FigureRow } from "./FigureRow";

interface FigureListProps {
  readonly context: PaneContext;
  readonly title: string;
  readonly subject: string;
  readonly lines: readonly FigureLine[];
}

/** Facts under a heading; at most one of them is being inserted at a time. */
export function FigureList({ context, title, subject, lines }: FigureListProps) {
  const [inserting, setInserting] = useState<string | null>(null);
  if (lines.length === 0) return null;
  return (
    <section>
      <h3>{title}</h3>
      <ul class="figures">
        {lines.map((line) => (
          <FigureRow
            key={line.label}
            context={context}
            line={line}
            subject={subject}
            inserting={inserting === line.label}
            onInsert={(open) => setInserting(open ? line.label : null)}
          />
        ))}
      </ul>
    </section>
  );
}
