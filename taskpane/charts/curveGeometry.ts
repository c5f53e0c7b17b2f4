import { scaleLinear } from "d3-scale";
import { area, curveMonotoneX, line } from "d3-shape";

/** One point of a freezing curve. */
export interface CurveDot {
  readonly temperatureC: number;
  readonly fraction: number;
  readonly band: number | null;
}

export const CHART = { width: 320, height: 228, left: 38, right: 10, top: 22, bottom: 34 } as const;

/** Scales and paths of the picture, in its own units; it gets colder to the right, as in a freezer. */
export function curveGeometry(dots: readonly CurveDot[], coldestC: number) {
  const x = scaleLinear([0, coldestC], [CHART.left, CHART.width - CHART.right]);
  const y = scaleLinear([0, 1], [CHART.height - CHART.bottom, CHART.top]);
  const clamped = (fraction: number) => y(Math.min(1, Math.max(0, fraction)));
  const along = (dot: CurveDot) => x(dot.temperatureC);
  const ice = area<CurveDot>(along, y(0), (dot) => y(dot.fraction)).curve(curveMonotoneX);
  const edge = line<CurveDot>(along, (dot) => y(dot.fraction)).curve(curveMonotoneX);
  const band = area<CurveDot>(
    along,
    (dot) => clamped(dot.fraction - (dot.band ?? 0)),
    (dot) => clamped(dot.fraction + (dot.band ?? 0)),
  ).curve(curveMonotoneX);
  return {
    x,
    y,
    temperatureTicks: x.ticks(6),
    fractionTicks: y.ticks(5),
    icePath: ice(dots) ?? "",
    edgePath: edge(dots) ?? "",
    bandPath: dots.some((dot) => dot.band !== null) ? (band(dots) ?? "") : "",
  };
}
