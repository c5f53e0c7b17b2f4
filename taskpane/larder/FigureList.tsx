import { useState } from "preact/hooks";
import type { PaneContext } from "../view";
import type { FigureLine } from "./figureLine";
import { whyText } from "./whyText";
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
  const [first] = lines;
  if (first === undefined) return null;
  const { source, obtained } = first;
  const isShared =
    lines.length > 1 && lines.every((line) => line.source === source && line.obtained === obtained);
  // A line without an uncertainty has no basis to give, so one that has speaks for all.
  const spokesman = lines.find(({ basis }) => basis !== "") ?? first;
  return (
    <section>
      <h3>{title}</h3>
      {isShared && <p class="figure-why">{whyText(spokesman, context.words)}</p>}
      <ul class="figures">
        {lines.map((line) => (
          <FigureRow
            key={line.label}
            context={context}
            line={line}
            subject={subject}
            showsWhy={!isShared}
            inserting={inserting === line.label}
            onInsert={(open) => setInserting(open ? line.label : null)}
          />
        ))}
      </ul>
    </section>
  );
}
