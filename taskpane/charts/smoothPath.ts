type Point = readonly [x: number, y: number];

const at = (points: readonly Point[], index: number): Point => points[index] ?? [0, 0];
const secant = ([x0, y0]: Point, [x1, y1]: Point): number =>
  x1 === x0 ? 0 : (y1 - y0) / (x1 - x0);

/** The slope in a point that leaves no bump beside it: Steffen, Astron. Astrophys. 239 (1990) 443, eq. 11. */
function innerSlope(before: Point, here: Point, after: Point): number {
  const [left, right] = [secant(before, here), secant(here, after)];
  const [widthLeft, widthRight] = [here[0] - before[0], after[0] - here[0]];
  const parabola = (left * widthRight + right * widthLeft) / (widthLeft + widthRight);
  return (
    (Math.sign(left) + Math.sign(right)) *
    Math.min(Math.abs(left), Math.abs(right), Math.abs(parabola) / 2)
  );
}

function slopes(points: readonly Point[]): readonly number[] {
  const last = points.length - 1;
  if (last < 2) return points.map(() => secant(at(points, 0), at(points, last)));
  const inner = points.map((point, index) =>
    index === 0 || index === last
      ? 0
      : innerSlope(at(points, index - 1), point, at(points, index + 1)),
  );
  // At an end: a parabola through its neighbour.
  const ending = (end: number, beside: number) =>
    (3 * secant(at(points, end), at(points, beside)) - (inner[beside] ?? 0)) / 2;
  return inner.map((slope, index) => {
    if (index === 0) return ending(0, 1);
    return index === last ? ending(last, last - 1) : slope;
  });
}

/** The curve after "M" or "L". */
function curveThrough(points: readonly Point[]): string {
  const slope = slopes(points);
  return points
    .map(([x, y], index) => {
      if (index === 0) return `${x},${y}`;
      const [x0, y0] = at(points, index - 1);
      const third = (x - x0) / 3;
      const [leaving = 0, arriving = 0] = [slope[index - 1], slope[index]];
      return `C${x0 + third},${y0 + third * leaving},${x - third},${y - third * arriving},${x},${y}`;
    })
    .join("");
}

/** An SVG path through points in the order of x that rises and falls only where they do. */
export const linePath = (points: readonly Point[]): string =>
  points.length === 0 ? "" : `M${curveThrough(points)}`;

/** The SVG path around what lies between two such lines. */
export const areaPath = (upper: readonly Point[], lower: readonly Point[]): string =>
  upper.length === 0 ? "" : `M${curveThrough(upper)}L${curveThrough([...lower].reverse())}Z`;
