/** A piece without air that is cooled or warmed evenly on all its faces. */
export interface Piece {
  readonly halfThicknessM: number; // radius when round
  /** 1 for a slab, 2 for a long cylinder, 3 for a sphere. */
  readonly dimensions: 1 | 2 | 3;
  readonly densityKgPerM3: number;
  readonly conductivityWPerMK: number; // of what is frozen when it is done
  readonly surfaceWPerM2K: number;
  readonly surroundingsC: number;
}

/** From where to where the core goes, and what heat the food holds on the way. */
export interface Course {
  readonly startC: number;
  readonly coreC: number;
  readonly freezingPointC: number;
  readonly heatContentJPerKg: (temperatureC: number) => number;
}

/** Resistance to conduction over that of the surface: h·d/k, d half the thickness. */
export const biotNumber = (piece: Piece): number =>
  (piece.surfaceWPerM2K * piece.halfThicknessM) / piece.conductivityWPerMK;

/** Share of the way from the core to the surroundings that lies inside the piece. */
const insideShare = (piece: Piece): number => 1 - 1 / (1 + biotNumber(piece) / 2);

/** Temperature of the surface while the core is at `coreC`. */
export const surfaceC = (piece: Piece, coreC: number): number =>
  coreC - insideShare(piece) * (coreC - piece.surroundingsC);

/**
 * By how much of the way to the surroundings the mean lies off the core, evenly conducting: a third, a half,
 * three fifths of what lies inside for slab, cylinder, sphere (Pham takes a half for all).
 */
const meanShare = (piece: Piece): number =>
  (insideShare(piece) * piece.dimensions) / (piece.dimensions + 2);

const STEPS = 40;

/**
 * Σ ΔH/|T_core − T_a| between two mean temperatures, J/(kg·K). Steps grow with the distance from the freezing
 * point, near which most of the heat comes.
 */
function heatPerKelvin(
  { heatContentJPerKg, freezingPointC }: Course,
  fromC: number,
  toC: number,
  drivingK: (meanC: number) => number,
): number {
  const nearStart = Math.abs(fromC - freezingPointC) < Math.abs(toC - freezingPointC);
  const placed = (share: number) => (nearStart ? share ** 2 : 1 - (1 - share) ** 2);
  let sum = 0;
  let [beforeC, before] = [fromC, heatContentJPerKg(fromC)];
  for (let step = 1; step <= STEPS; step += 1) {
    const nextC = fromC + (toC - fromC) * placed(step / STEPS);
    const next = heatContentJPerKg(nextC);
    sum += Math.abs(next - before) / drivingK((beforeC + nextC) / 2);
    [beforeC, before] = [nextC, next];
  }
  return sum;
}

/**
 * Seconds until the core reaches its temperature, in Plank's and Pham's form with the heat in small steps:
 *   t = d·ρ/(E·h) · (1 + Bi/2) · Σ ΔH/|T_core − T_a|,  E = 1, 2, 3.
 * Cooling above the freezing point, freezing and cooling below come one after the other from the food's own heat
 * content. ΔH goes by the mean temperature of the piece, the driving difference by its core, which while it
 * freezes is at most at the freezing point (and while it warms at least where it began). All heat given off at
 * the freezing point makes it Plank's equation.
 * @source pham1984; pham1986; plank1941
 */
export function freezingTimeS(piece: Piece, course: Course): number {
  const { surroundingsC } = piece;
  const { startC, coreC, freezingPointC } = course;
  const share = meanShare(piece);
  const endC = coreC - share * (coreC - surroundingsC);
  const drivingK = (limitC: number) => (meanC: number) =>
    Math.min(Math.abs(meanC - surroundingsC) / (1 - share), Math.abs(limitC - surroundingsC));
  const freezes = startC > freezingPointC && coreC < freezingPointC;
  const perKelvin = freezes
    ? heatPerKelvin(course, startC, freezingPointC, drivingK(startC)) +
      heatPerKelvin(course, freezingPointC, endC, drivingK(freezingPointC))
    : heatPerKelvin(course, startC, endC, drivingK(startC));
  const perArea =
    (piece.halfThicknessM * piece.densityKgPerM3) / (piece.dimensions * piece.surfaceWPerM2K);
  return perArea * (1 + biotNumber(piece) / 2) * perKelvin;
}
