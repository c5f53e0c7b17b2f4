import type { ComponentChildren } from "preact";
import type { ComparedFigure } from "../compared/comparison";
import { idealMisses, ourMisses } from "../compared/misses";
import { shownMiss } from "./shownNumber";

export interface MissRow {
  readonly name: ComponentChildren;
  readonly missUnit: string;
  readonly figures: readonly ComparedFigure[];
  /** A line below the name. */
  readonly below?: string;
}

interface MissTableProps {
  /** What the rows are: "Source", "Substance". */
  readonly of: string;
  readonly rows: readonly MissRow[];
}

function Misses({ figures }: Pick<MissRow, "figures">) {
  const [ours, ideal] = [ourMisses(figures), idealMisses(figures)];
  return (
    <>
      <td>{figures.length}</td>
      <td>{shownMiss(ours.rms)}</td>
      <td>{shownMiss(ours.largest)}</td>
      <td class="quiet">{ideal === null ? "–" : shownMiss(ideal.rms)}</td>
      <td class="quiet">{ideal === null ? "–" : shownMiss(ideal.largest)}</td>
    </>
  );
}

/** RMS and largest miss, ours and the ideal law's. */
export const MissTable = ({ of, rows }: MissTableProps) => (
  <table class="numbers" style="--columns: 5">
    <thead>
      <tr>
        <th scope="col">{of}</th>
        <th scope="col">Figures</th>
        <th scope="col">RMS</th>
        <th scope="col">Largest</th>
        <th scope="col">RMS, ideal law</th>
        <th scope="col">Largest, ideal law</th>
      </tr>
    </thead>
    <tbody>
      {rows.map((row) => (
        <tr>
          <th scope="row">
            {row.name} <span class="quiet">({row.missUnit})</span>
            {row.below !== undefined && <span class="reason">{row.below}</span>}
          </th>
          <Misses {...row} />
        </tr>
      ))}
    </tbody>
  </table>
);
