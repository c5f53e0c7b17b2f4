import { scaleLinear, type ScaleLinear } from "d3-scale";

export const PLOT = { width: 340, height: 270, left: 50, right: 12, top: 18, bottom: 38 } as const;

export type Scale = ScaleLinear<number, number>;

const padded = (values: readonly number[]): [number, number] => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = (high - low || Math.abs(high) || 1) * 0.04;
  return [low - room, high + room];
};

/** From left to right over all values. */
export const acrossScale = (values: readonly number[]): Scale =>
  scaleLinear(padded(values), [PLOT.left, PLOT.width - PLOT.right]);

/** From the foot up over all values. */
export const upScale = (values: readonly number[]): Scale =>
  scaleLinear(padded(values), [PLOT.height - PLOT.bottom, PLOT.top]);

const round = (value: number): string => String(Number(value.toFixed(1)));

/** Many points as one path: dots are drawn by its round line ends. */
export const dots = (points: readonly (readonly [x: number, y: number])[]): string =>
  points.map(([x, y]) => `M${round(x)} ${round(y)}h0`).join("");

const ARM = 2.4;

/** Many small upright crosses as one path. */
export const crosses = (points: readonly (readonly [x: number, y: number])[]): string =>
  points
    .map(
      ([x, y]) =>
        `M${round(x - ARM)} ${round(y)}h${2 * ARM}M${round(x)} ${round(y - ARM)}v${2 * ARM}`,
    )
    .join("");

/** Many upright strokes as one path. */
export const strokes = (
  lines: readonly (readonly [x: number, from: number, to: number])[],
): string => lines.map(([x, from, to]) => `M${round(x)} ${round(from)}V${round(to)}`).join("");
