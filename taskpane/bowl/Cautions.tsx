import type { Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";

interface CautionsProps {
  readonly context: PaneContext;
  /** What RIME.CAUTIONS spills: a header row, then one caution a row. */
  readonly cautions: Matrix;
}

/** What to tell the eater. */
export function Cautions({ context, cautions }: CautionsProps) {
  const { words } = context;
  const only = cautions[0]?.[0] ?? null;
  if (only === null) return null;
  const rows = isProblem(only) ? [[only.message]] : cautions.slice(1);
  if (rows.length === 0) return null;
  return (
    <section>
      <h3>{words.cautionsTitle}</h3>
      {rows.map((row, index) => (
        <Notice key={index} tone="warning">
          {row.map((cell) => (isProblem(cell) ? cell.message : String(cell ?? ""))).join(" · ")}
        </Notice>
      ))}
    </section>
  );
}
