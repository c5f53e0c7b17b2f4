import { linearScale } from "./linearScale";
import { areaPath, linePath } from "./smoothPath";

/** One point of a freezing curve. */
export interface CurveDot {
  readonly temperatureC: number;
  readonly fraction: number;
  readonly band: number | null;
}

export const CHART = { width: 320, height: 228, left: 38, right: 10, top: 22, bottom: 34 } as const;

/** Scales and paths of the picture, in its own units; it gets colder to the right, as in a freezer. */
export function curveGeometry(dots: readonly CurveDot[], coldestC: number) {
  const x = linearScale([0, coldestC], [CHART.left, CHART.width - CHART.right]);
  const y = linearScale([0, 1], [CHART.height - CHART.bottom, CHART.top]);
  const clamped = (fraction: number) => y(Math.min(1, Math.max(0, fraction)));
  const along = (height: (dot: CurveDot) => number) =>
    dots.map((dot) => [x(dot.temperatureC), height(dot)] as const);
  const edge = along(({ fraction }) => y(fraction));
  const beside = (side: 1 | -1) =>
    along(({ fraction, band }) => clamped(fraction + side * (band ?? 0)));
  return {
    x,
    y,
    temperatureTicks: x.ticks(6),
    fractionTicks: y.ticks(5),
    icePath: areaPath(
      edge,
      along(() => y(0)),
    ),
    edgePath: linePath(edge),
    bandPath: dots.some(({ band }) => band !== null) ? areaPath(beside(1), beside(-1)) : "",
  };
}
