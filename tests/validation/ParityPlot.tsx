import type { Comparison } from "./comparison";
import { PlotAxes } from "./PlotAxes";
import { acrossScale, crosses, dots, PLOT, upScale } from "./plotFrame";

/** Computed against printed: on the slanted line they agree. Dots are ours, crosses the ideal law's. */
export function ParityPlot({ title, source, unit, figures }: Comparison) {
  const values = figures.flatMap(({ printed, computed, ideal }) =>
    ideal === null ? [printed, computed] : [printed, computed, ideal],
  );
  const [x, y] = [acrossScale(figures.map(({ printed }) => printed)), upScale(values)];
  const [low = 0, high = 1] = x.domain();
  const ideal = figures.flatMap(({ printed, ideal: one }) =>
    one === null ? [] : [[x(printed), y(one)] as const],
  );
  return (
    <svg
      viewBox={`0 0 ${PLOT.width} ${PLOT.height}`}
      role="img"
      aria-label={`${title}, ${source}: computed against printed, ${figures.length} figures; on the slanted line both agree.`}
    >
      <PlotAxes x={x} y={y} xLabel={`printed, ${unit}`} yLabel={`computed, ${unit}`} />
      <line class="same" x1={x(low)} y1={y(low)} x2={x(high)} y2={y(high)} />
      {ideal.length > 0 && <path class="ideal" d={crosses(ideal)} />}
      <path
        class="ours"
        d={dots(figures.map(({ printed, computed }) => [x(printed), y(computed)]))}
      />
    </svg>
  );
}
