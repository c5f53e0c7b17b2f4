import { isReached, type Aim } from "../compared/aims";
import { ourMisses } from "../compared/misses";
import { shownMiss } from "./shownNumber";

const limit = (value: number | null): string => (value === null ? "–" : String(value));

function AimRow({ aim }: { readonly aim: Aim }) {
  const { name, missUnit, figures, rms, largest, reason } = aim;
  const [ours, reached] = [ourMisses(figures), isReached(aim)];
  return (
    <tr class={reached ? "" : "missed"}>
      <th scope="row">
        <span class="verdict">{reached ? "✓ reached" : "✗ missed"}</span> {name}{" "}
        <span class="quiet">({missUnit})</span>
        {!reached && reason !== null && <span class="reason">{reason}</span>}
      </th>
      <td>{figures.length}</td>
      <td>{shownMiss(ours.rms)}</td>
      <td class="quiet">{limit(rms)}</td>
      <td>{shownMiss(ours.largest)}</td>
      <td class="quiet">{limit(largest)}</td>
    </tr>
  );
}

/** What was aimed at and what is reached; those missed come first, with their size and reason. */
export function AimTable({ aims }: { readonly aims: readonly Aim[] }) {
  const ordered = [...aims.filter((aim) => !isReached(aim)), ...aims.filter(isReached)];
  return (
    <table class="numbers" style="--columns: 5">
      <thead>
        <tr>
          <th scope="col">Against figures no fit has read</th>
          <th scope="col">Figures</th>
          <th scope="col">RMS</th>
          <th scope="col">aim</th>
          <th scope="col">Largest</th>
          <th scope="col">aim</th>
        </tr>
      </thead>
      <tbody>
        {ordered.map((aim) => (
          <AimRow aim={aim} />
        ))}
      </tbody>
    </table>
  );
}
