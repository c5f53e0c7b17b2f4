import type { NumberFormat } from "../words/numberFormat";
import { CHART } from "./curveGeometry";
import type { LinearScale } from "./linearScale";

interface PlotAxesProps {
  readonly x: LinearScale;
  readonly y: LinearScale;
  /** What the ticks are multiplied by: 100 for fractions shown as per cent. */
  readonly xFactor?: number;
  readonly yFactor?: number;
  readonly xLabel: string;
  readonly yLabel: string;
  readonly numbers: NumberFormat;
}

const TICKS = 6;

/** The ticks' figures, all with as many decimals as tell them apart. */
function tickFigures(ticks: readonly number[], factor: number, numbers: NumberFormat) {
  const values = ticks.map((tick) => tick * factor);
  const isRound = (decimals: number) =>
    values.every((value) => Math.abs(value - Number(value.toFixed(decimals))) < 1e-9);
  const decimals = [0, 1, 2].find(isRound) ?? 3;
  return values.map((value) => numbers.fixed(value, decimals));
}

/** Lines and figures of a picture's two scales. */
export function PlotAxes({
  x,
  y,
  xFactor = 1,
  yFactor = 1,
  xLabel,
  yLabel,
  numbers,
}: PlotAxesProps) {
  const [across, up] = [x.ticks(TICKS), y.ticks(TICKS)];
  const [acrossFigures, upFigures] = [
    tickFigures(across, xFactor, numbers),
    tickFigures(up, yFactor, numbers),
  ];
  return (
    <g class="curve-axes">
      {up.map((tick, at) => (
        <g key={tick} transform={`translate(0 ${y(tick)})`}>
          <line x1={CHART.left} x2={CHART.width - CHART.right} />
          <text x={CHART.left - 5} dy="0.32em" text-anchor="end">
            {upFigures[at]}
          </text>
        </g>
      ))}
      {across.map((tick, at) => (
        <text key={tick} x={x(tick)} y={CHART.height - CHART.bottom + 14} text-anchor="middle">
          {acrossFigures[at]}
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
