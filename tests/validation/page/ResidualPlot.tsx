import { QUANTITIES, type Comparison } from "../compared/comparison";
import { ourMisses } from "../compared/misses";
import { Beyond } from "./ParityPlot";
import { Picture } from "./Picture";
import { PlotAxes } from "./PlotAxes";
import {
  acrossScale,
  crosses,
  dots,
  isWithin,
  padded,
  PLOT,
  strokes,
  upScale,
  type Point,
} from "./plotFrame";
import { shownMiss } from "./shownNumber";

const ROOM = 1.5; // so that the first of the ideal law's misses are in the picture too

/** What is left between computed and printed, with the uncertainty we state as grey strokes about zero. */
export function ResidualPlot({ id, title, quantity, figures }: Comparison) {
  const { unit, missUnit } = QUANTITIES[quantity];
  const { largest } = ourMisses(figures);
  const reach = ROOM * Math.max(1e-6, largest, ...figures.map(({ band }) => band ?? 0));
  const x = acrossScale(padded(figures.map(({ printed }) => printed)));
  const y = upScale([-reach, reach]);
  const ideal = figures.flatMap(({ printed, ideal: one }): Point[] =>
    one === null ? [] : [[printed, one - printed]],
  );
  const drawn = ideal.filter(([, miss]) => isWithin(y, miss));
  const bands = figures.flatMap(({ printed, band }) =>
    band === null ? [] : [[x(printed), y(-band), y(band)] as const],
  );
  return (
    <figure>
      <Picture
        id={`${id}-residual`}
        title={`${title}: computed less printed`}
        description={`Dots about zero; the largest miss is ${shownMiss(largest)} ${missUnit}. ${bands.length} grey strokes show the uncertainty that is stated. The ideal law misses by more than the picture shows in ${ideal.length - drawn.length} of ${ideal.length} cases.`}
      >
        <path class="stated" d={strokes(bands)} />
        <PlotAxes
          x={x}
          y={y}
          xLabel={`printed, ${unit}`}
          yLabel={`computed − printed, ${missUnit}`}
        />
        <line class="same" x1={PLOT.left} x2={PLOT.width - PLOT.right} y1={y(0)} y2={y(0)} />
        <path class="ideal" d={crosses(drawn.map(([at, miss]) => [x(at), y(miss)]))} />
        <path
          class="ours"
          d={dots(figures.map(({ printed, computed }) => [x(printed), y(computed - printed)]))}
        />
      </Picture>
      <Beyond all={ideal.length} drawn={drawn.length} />
    </figure>
  );
}
