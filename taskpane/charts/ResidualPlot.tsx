import type { NumberFormat } from "../words/numberFormat";
import { CHART } from "./curveGeometry";
import { linearScale, niceEnds } from "./linearScale";
import { PlotAxes } from "./PlotAxes";
import "./freezingCurve.css";

export interface ResidualDot {
  readonly measured: number;
  readonly forecast: number;
  /** One standard uncertainty of the forecast; null where it is not known. */
  readonly band: number | null;
}

interface ResidualPlotProps {
  readonly numbers: NumberFormat;
  readonly title: string;
  readonly xLabel: string;
  readonly yLabel: string;
  readonly dots: readonly ResidualDot[];
}

/** Measured less forecast against the forecast, each with the forecast's uncertainty, about the line of none. */
export function ResidualPlot({ numbers, title, xLabel, yLabel, dots }: ResidualPlotProps) {
  const residuals = dots.map(({ measured, forecast }) => measured - forecast);
  const reach = Math.max(
    0.2,
    ...residuals.map((residual, at) => Math.abs(residual) + (dots[at]?.band ?? 0)),
  );
  const forecasts = dots.map(({ forecast }) => forecast);
  const [coldest, warmest] = [Math.min(0, ...forecasts) - 0.5, Math.max(...forecasts, -0.5) + 0.5];
  const x = linearScale(niceEnds([warmest, coldest]), [CHART.left, CHART.width - CHART.right]);
  const y = linearScale(niceEnds([-reach, reach]), [CHART.height - CHART.bottom, CHART.top]);
  return (
    <svg class="curve" viewBox={`0 0 ${CHART.width} ${CHART.height}`} role="img" aria-label={title}>
      <PlotAxes x={x} y={y} xLabel={xLabel} yLabel={yLabel} numbers={numbers} />
      <line class="bar-now" x1={CHART.left} x2={CHART.width - CHART.right} y1={y(0)} y2={y(0)} />
      {dots.map(({ forecast, measured, band }, at) => {
        const residual = measured - forecast;
        return (
          <g key={at} class="curve-mark">
            {band !== null && (
              <line
                class="curve-whisker"
                x1={x(forecast)}
                x2={x(forecast)}
                y1={y(residual - band)}
                y2={y(residual + band)}
              />
            )}
            <circle cx={x(forecast)} cy={y(residual)} r="3.5" />
          </g>
        );
      })}
    </svg>
  );
}
