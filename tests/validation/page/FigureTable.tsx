import { QUANTITIES, type Comparison } from "../compared/comparison";
import { shownMiss, shownValue, signed } from "./shownNumber";

const dash = "–";

/** Every figure of a source: what the pictures are drawn from. */
export function FigureTable({ quantity, figures, declined }: Comparison) {
  const { unit, missUnit, digits } = QUANTITIES[quantity];
  const shown = (value: number) => shownValue(value, quantity);
  return (
    <details class="all-figures">
      <summary>All {figures.length + declined.length} figures</summary>
      <table class="numbers" style="--columns: 5">
        <thead>
          <tr>
            <th scope="col">Of</th>
            <th scope="col">Printed, {unit}</th>
            <th scope="col">Computed</th>
            <th scope="col">Miss, {missUnit}</th>
            <th scope="col">Stated ±</th>
            <th scope="col">Ideal law</th>
          </tr>
        </thead>
        <tbody>
          {figures.map(({ label, printed, computed, band, ideal }) => (
            <tr>
              <th scope="row">{label}</th>
              <td>{shown(printed)}</td>
              <td>{shown(computed)}</td>
              <td>{signed((computed - printed).toFixed(digits))}</td>
              <td>{band === null ? dash : shownMiss(band)}</td>
              <td class="quiet">{ideal === null ? dash : shown(ideal)}</td>
            </tr>
          ))}
          {declined.map(({ label, printed, reason }) => (
            <tr>
              <th scope="row">{label}</th>
              <td>{shown(printed)}</td>
              <td colSpan={4}>#N/A: {reason}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
