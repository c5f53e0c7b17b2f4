import { PLOT, type Scale } from "./plotFrame";

interface PlotAxesProps {
  readonly x: Scale;
  readonly y: Scale;
  readonly xLabel: string;
  readonly yLabel: string;
}

const written = (value: number, scale: Scale): string =>
  scale.tickFormat(5)(value).replace("-", "−");

const MOST_ACROSS = 5;

/** Lines and figures of both scales. */
export const PlotAxes = ({ x, y, xLabel, yLabel }: PlotAxesProps) => (
  <g class="axes" aria-hidden="true">
    {y.ticks(5).map((tick) => (
      <g transform={`translate(0 ${y(tick).toFixed(1)})`}>
        <line x1={PLOT.left} x2={PLOT.width - PLOT.right} />
        <text x={PLOT.left - 6} dy="0.32em" text-anchor="end">
          {written(tick, y)}
        </text>
      </g>
    ))}
    {x.ticks(x.ticks(5).length > MOST_ACROSS ? 3 : 5).map((tick) => (
      <text x={x(tick).toFixed(1)} y={PLOT.height - PLOT.bottom + 17} text-anchor="middle">
        {written(tick, x)}
      </text>
    ))}
    <text x={PLOT.width - PLOT.right} y={PLOT.height - 8} text-anchor="end">
      {xLabel}
    </text>
    <text x={4} y={13}>
      {yLabel}
    </text>
  </g>
);
