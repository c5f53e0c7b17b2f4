import { QUANTITIES, type Comparison } from "../compared/comparison";
import { Picture } from "./Picture";
import { PlotAxes } from "./PlotAxes";
import {
  acrossScale,
  crosses,
  dots,
  isWithin,
  padded,
  upScale,
  type Point,
  type Scale,
} from "./plotFrame";
import { shownValue } from "./shownNumber";

/** The ideal law may leave our range by this share of it; crosses further off are counted, not drawn. */
const ROOM_FOR_IDEAL = 0.35;

/** Upwards over our values and print, and as far over the ideal law's as does not squeeze them. */
function yScale({ figures }: Comparison): Scale {
  const [low, high] = padded(figures.flatMap(({ printed, computed }) => [printed, computed]));
  const room = ROOM_FOR_IDEAL * (high - low);
  const inReach = figures.flatMap(({ ideal }) =>
    ideal !== null && ideal > low - room && ideal < high + room ? [ideal] : [],
  );
  return upScale([Math.min(low, ...inReach), Math.max(high, ...inReach)]);
}

/** Computed against printed: on the slanted line they agree. Dots are ours, crosses the ideal law's. */
export function ParityPlot(comparison: Comparison) {
  const { id, title, quantity, figures } = comparison;
  const { unit } = QUANTITIES[quantity];
  const [x, y] = [acrossScale(padded(figures.map(({ printed }) => printed))), yScale(comparison)];
  const ideal = figures.flatMap(({ printed, ideal: one }): Point[] =>
    one === null ? [] : [[printed, one]],
  );
  const drawn = ideal.filter(([, value]) => isWithin(y, value));
  const [low = 0, high = 1] = x.domain();
  const ends = figures.map(({ printed }) => printed).sort((a, b) => a - b);
  return (
    <figure>
      <Picture
        id={`${id}-parity`}
        title={`${title}: computed against printed`}
        description={`${figures.length} dots, one a printed figure, from ${shownValue(ends[0]!, quantity)} to ${shownValue(ends.at(-1)!, quantity)} ${unit}; on the slanted line computed and printed agree. ${ideal.length} crosses show the ideal law.`}
      >
        <PlotAxes x={x} y={y} xLabel={`printed, ${unit}`} yLabel={`computed, ${unit}`} />
        <line class="same" x1={x(low)} y1={y(low)} x2={x(high)} y2={y(high)} />
        <path class="ideal" d={crosses(drawn.map(([at, value]) => [x(at), y(value)]))} />
        <path
          class="ours"
          d={dots(figures.map(({ printed, computed }) => [x(printed), y(computed)]))}
        />
      </Picture>
      <Beyond all={ideal.length} drawn={drawn.length} />
    </figure>
  );
}

/** Says how many of the ideal law's crosses lie outside a picture. */
export const Beyond = ({ all, drawn }: { readonly all: number; readonly drawn: number }) =>
  all === drawn ? null : (
    <figcaption>
      {all - drawn} of {all} crosses lie outside this picture.
    </figcaption>
  );
