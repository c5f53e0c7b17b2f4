import { scaleLinear } from "d3-scale";
import { area, curveMonotoneX, line } from "d3-shape";
import fc from "fast-check";
import { linearScale, niceEnds } from "../../../taskpane/charts/linearScale";
import { areaPath, linePath } from "../../../taskpane/charts/smoothPath";

// Expected: d3-scale and d3-shape, general-purpose libraries (Bostock), which the pane itself has no room for.
const heights = fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 1, maxLength: 30 });
const pointsOf = (ys: readonly number[]) => ys.map((y, at) => [at * 7 + (at % 3), y] as const);
/** A path as its letters and its numbers, a straight line as the curve that it is. */
const parts = (path: string) => ({
  letters: path.replace(/[^A-Z]/g, ""),
  numbers: (path.match(/-?\d+(\.\d+)?(e-?\d+)?/g) ?? []).map(Number),
});
const expectSamePath = (path: string, expected: string) => {
  const [ours, theirs] = [parts(path), parts(expected)];
  expect(ours.letters).toBe(theirs.letters);
  ours.numbers.forEach((number, at) => expect(number).toBeCloseTo(theirs.numbers[at]!, 2));
};

test("a line and the area under it are drawn as d3-shape's monotone curve draws them", () => {
  fc.assert(
    fc.property(heights, (ys) => {
      fc.pre(ys.length > 2); // of one or two points it draws a straight line
      const points = pointsOf(ys);
      const [x, y] = [
        (p: readonly [number, number]) => p[0],
        (p: readonly [number, number]) => p[1],
      ];
      expectSamePath(linePath(points), line(x, y).curve(curveMonotoneX)(points)!);
      const ground = points.map(([at]) => [at, 0] as const);
      expectSamePath(areaPath(points, ground), area(x, 0, y).curve(curveMonotoneX)(points)!);
    }),
  );
});

test("two points are joined by a straight line, none by nothing", () => {
  expect(
    parts(
      linePath([
        [0, 0],
        [3, 6],
      ]),
    ).numbers,
  ).toEqual([0, 0, 1, 2, 2, 4, 3, 6]);
  expect([linePath([]), areaPath([], [])]).toEqual(["", ""]);
});

test("values, ticks and round ends are d3-scale's, upward and downward", () => {
  const end = fc.integer({ min: -600, max: 600 }).map((tenths) => tenths / 10);
  fc.assert(
    fc.property(end, end, end, (from, to, value) => {
      fc.pre(from !== to);
      const [ours, theirs] = [
        linearScale(niceEnds([from, to]), [38, 310]),
        scaleLinear([from, to], [38, 310]).nice(),
      ];
      expect(niceEnds([from, to])).toEqual(theirs.domain().map((one) => one + 0)); // −0 is 0
      expect(ours(value)).toBeCloseTo(theirs(value), 6);
      expect(ours.ticks(6)).toEqual(theirs.ticks(6).map((one) => one + 0));
    }),
  );
});
