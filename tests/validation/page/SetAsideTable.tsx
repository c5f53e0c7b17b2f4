import type { Comparison } from "../compared/comparison";
import { ourMisses } from "../compared/misses";
import { shownMiss } from "./shownNumber";

/** Tables that no fit reads and no aim is held to, each with its reason and how far off they would be. */
export const SetAsideTable = ({ tables }: { readonly tables: readonly Comparison[] }) => (
  <table class="numbers" style="--columns: 3">
    <thead>
      <tr>
        <th scope="col">Table and reason</th>
        <th scope="col">Compared</th>
        <th scope="col">RMS, K</th>
        <th scope="col">Largest, K</th>
      </tr>
    </thead>
    <tbody>
      {tables.map(({ title, source, note, figures }) => (
        <tr>
          <th scope="row">
            {title}: {note}
            <span class="reason">{source}</span>
          </th>
          <td>{figures.length}</td>
          <td>{figures.length === 0 ? "–" : shownMiss(ourMisses(figures).rms)}</td>
          <td>{figures.length === 0 ? "–" : shownMiss(ourMisses(figures).largest)}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
