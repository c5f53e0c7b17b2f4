import type { Course, Piece } from "../../../src/engine/thermal/freezingTime";

/** Values of a function at equal distances, read by straight lines between them. */
function tabulated(from: number, to: number, count: number, valueAt: (x: number) => number) {
  const values = Float64Array.from({ length: count + 1 }, (_, i) =>
    valueAt(from + ((to - from) * i) / count),
  );
  return (x: number): number => {
    const place = ((x - from) / (to - from)) * count;
    const i = Math.max(0, Math.min(count - 1, Math.floor(place)));
    return values[i]! + (values[i + 1]! - values[i]!) * (place - i);
  };
}

/** The inverse of a growing function that stands as a table, by walking along it. */
function inverse(valueAt: (x: number) => number, from: number, to: number) {
  const [count, rows] = [20_000, 4000];
  const values = Float64Array.from({ length: rows + 1 }, (_, i) =>
    valueAt(from + ((to - from) * i) / rows),
  );
  const [least, most] = [values[0]!, values[rows]!];
  let row = 0;
  return tabulated(least, most, count, (wanted) => {
    while (row < rows - 1 && values[row + 1]! < wanted) row += 1;
    const share = (wanted - values[row]!) / (values[row + 1]! - values[row]!);
    return from + ((to - from) * (row + Math.min(Math.max(share, 0), 1))) / rows;
  });
}

/**
 * Seconds until the innermost of `cells` shells reaches the core temperature: conduction solved in small steps
 * of time, each shell's temperature from its own heat content. Knows nothing of Plank or Pham.
 */
export function conductedS(
  piece: Piece,
  course: Course,
  conductivityAt: (temperatureC: number) => number,
  cells = 12,
): number {
  const { halfThicknessM, dimensions, densityKgPerM3, surfaceWPerM2K, surroundingsC } = piece;
  const [coldC, warmC] = [-48, 45];
  const { heatContentJPerKg: heat, startC, coreC } = course;
  const temperatureOf = inverse(heat, coldC, warmC);
  const conductivity = tabulated(coldC, warmC, 1000, conductivityAt);
  const width = halfThicknessM / cells;
  const face = (i: number) => (i * width) ** (dimensions - 1);
  const volume = (i: number) =>
    (((i + 1) * width) ** dimensions - (i * width) ** dimensions) / dimensions;
  const heats = new Float64Array(cells).fill(heat(startC));
  const volumes = Float64Array.from(heats, (_, i) => volume(i));
  const flow = new Float64Array(cells + 1);
  const temperatures = new Float64Array(cells);
  const resistances = new Float64Array(cells);
  const stepS = (0.25 * width ** 2 * densityKgPerM3 * 1800) / (2.6 * Math.max(dimensions - 1, 1));
  for (let timeS = 0; ; timeS += stepS) {
    for (let i = 0; i < cells; i += 1) {
      temperatures[i] = temperatureOf(heats[i]!);
      resistances[i] = width / 2 / conductivity(temperatures[i]!);
    }
    if (startC > coreC ? temperatures[0]! <= coreC : temperatures[0]! >= coreC) return timeS;
    for (let i = 1; i < cells; i += 1) {
      const across = resistances[i - 1]! + resistances[i]!;
      flow[i] = (face(i) * (temperatures[i - 1]! - temperatures[i]!)) / across;
    }
    const outward = resistances[cells - 1]! + 1 / surfaceWPerM2K;
    flow[cells] = (face(cells) * (temperatures[cells - 1]! - surroundingsC)) / outward;
    for (let i = 0; i < cells; i += 1) {
      heats[i]! -= (stepS * (flow[i + 1]! - flow[i]!)) / (densityKgPerM3 * volumes[i]!);
    }
  }
}
