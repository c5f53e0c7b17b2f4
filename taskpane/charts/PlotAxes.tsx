import type { NumberFormat } from "../words/numberFormat";
import { CHART } from "./curveGeometry";
import type { LinearScale } from "./linearScale";

interface PlotAxesProps {
  readonly x: LinearScale;
  readonly y: LinearScale;
  /** What the ticks are multiplied by: 100 for fractions shown as per cent. */
  readonly xFactor?: number;
  readonly yFactor?: number;
  readonly yDecimals?: number;
  readonly xLabel: string;
  readonly yLabel: string;
  readonly numbers: NumberFormat;
}

const TICKS = 6;

/** Lines and figures of a picture's two scales. */
export function PlotAxes({
  x,
  y,
  xFactor = 1,
  yFactor = 1,
  yDecimals = 0,
  xLabel,
  yLabel,
  numbers,
}: PlotAxesProps) {
  return (
    <g class="curve-axes">
      {y.ticks(TICKS).map((tick) => (
        <g key={tick} transform={`translate(0 ${y(tick)})`}>
          <line x1={CHART.left} x2={CHART.width - CHART.right} />
          <text x={CHART.left - 5} dy="0.32em" text-anchor="end">
            {numbers.fixed(tick * yFactor, yDecimals)}
          </text>
        </g>
      ))}
      {x.ticks(TICKS).map((tick) => (
        <text key={tick} x={x(tick)} y={CHART.height - CHART.bottom + 14} text-anchor="middle">
          {numbers.fixed(tick * xFactor, 0)}
        </text>
      ))}
      <text x={CHART.width - CHART.right} y={CHART.height - 4} text-anchor="end">
        {xLabel}
      </text>
      <text x={2} y={9}>
        {yLabel}
      </text>
    </g>
  );
}
