import { scaleLinear, type ScaleLinear } from "d3-scale";

export const PLOT = { width: 340, height: 280, left: 58, right: 14, top: 24, bottom: 46 } as const;

export type Scale = ScaleLinear<number, number>;
export type Point = readonly [x: number, y: number];

export const padded = (values: readonly number[]): [number, number] => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = (high - low || Math.abs(high) || 1) * 0.05;
  return [low - room, high + room];
};

/** From left to right over a domain. */
export const acrossScale = (domain: readonly [number, number]): Scale =>
  scaleLinear(domain, [PLOT.left, PLOT.width - PLOT.right]);

/** From the foot up over a domain. */
export const upScale = (domain: readonly [number, number]): Scale =>
  scaleLinear(domain, [PLOT.height - PLOT.bottom, PLOT.top]);

const round = (value: number): string => String(Number(value.toFixed(1)));

/** Many points as one path: dots are drawn by its round line ends. */
export const dots = (points: readonly Point[]): string =>
  points.map(([x, y]) => `M${round(x)} ${round(y)}h0`).join("");

const ARM = 2.8;

/** Many small upright crosses as one path. */
export const crosses = (points: readonly Point[]): string =>
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

/** Whether a value lies within a scale's domain. */
export function isWithin(scale: Scale, value: number): boolean {
  const [low = 0, high = 0] = scale.domain();
  return value >= low && value <= high;
}
