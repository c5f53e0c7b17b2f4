import { a1, put, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import type { Place, Problem } from "../layouts/parts";

export type Key =
  | "label"
  | "who"
  | "given"
  | "name"
  | "mass"
  | "molar"
  | "particles"
  | "water"
  | "constant"
  | "sought"
  | "worked"
  | "counted"
  | "moles"
  | "molality"
  | "depression"
  | "freezingPoint"
  | "first"
  | "second"
  | "measured"
  | "difference"
  | "bath"
  | "liquid"
  | "ice";

export type At = (key: Key) => string;

/** One quantity: its heading, its unit in a cell of its own perhaps, and what stands in its cells. */
export interface Line {
  readonly head: string;
  readonly unit?: string;
  readonly cell: (at: At, problem: Problem, index: number) => Content;
  /** Cells that every formula of the quantity reads, fixed. */
  readonly fixed?: readonly Spot[];
}

export type Lines = Readonly<Partial<Record<Key, Line>>>;

/** Quantities down and samples across, or the other way round. */
export interface GridPlace extends Place {
  readonly across?: true;
}

export interface Grid {
  readonly count: number;
  readonly end: number;
  readonly has: (key: Key) => boolean;
  readonly spot: (key: Key, index: number) => Spot;
  readonly spots: (key: Key) => Spot[];
}

const isCalculated = (content: Content): boolean =>
  typeof content === "object" &&
  typeof content.content === "string" &&
  content.content.startsWith("=");

/** Where each quantity of each sample stands; the heading at −1, or at −2 with its unit at −1. */
function places(sheet: CorpusSheet, place: GridPlace, keys: readonly Key[], units: number) {
  const { row, column, across } = place;
  return (key: Key, index: number): Spot => {
    const [along, on] = [keys.indexOf(key), 1 + units + index];
    return across
      ? { sheet: sheet.name, row: row + along, column: column + on }
      : { sheet: sheet.name, row: row + on, column: column + along };
  };
}

/** Marks the columns of formulas and of readings. */
function markColumns({ marked }: Kit, lines: Lines, grid: Grid, list: readonly Problem[]): void {
  for (const key of Object.keys(lines) as Key[]) {
    const { cell, fixed = [], unit } = lines[key]!;
    const spots = grid.spots(key);
    const heading = grid.spot(key, unit === undefined ? -1 : -2);
    if (isCalculated(cell(() => "A1", list[0]!, 0))) {
      marked.formulaColumns.push({ spots, heading, fixed });
    } else if (["first", "second", "measured", "bath"].includes(key)) {
      marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
    }
  }
}

/** Lays out some quantities of some samples. */
export function grid(
  kit: Kit,
  sheet: CorpusSheet,
  place: GridPlace,
  lines: Lines,
  list: readonly Problem[],
): Grid {
  const keys = Object.keys(lines) as Key[];
  const units = keys.some((key) => lines[key]!.unit !== undefined) ? 1 : 0;
  const spot = places(sheet, place, keys, units);
  const write = ({ row, column }: Spot, content: Content) => put(sheet, row, column, content);
  for (const key of keys) {
    const { head, unit, cell } = lines[key]!;
    write(spot(key, -1 - units), head);
    if (unit !== undefined) write(spot(key, -1), unit);
    list.forEach((problem, index) => {
      const content = cell((other) => a1(spot(other, index)), problem, index);
      if (content !== undefined) write(spot(key, index), content);
    });
  }
  const made: Grid = {
    ...{ count: list.length, spot, has: (key) => lines[key] !== undefined },
    end: place.row + (place.across ? keys.length : 1 + units + list.length),
    spots: (key) => list.map((_, index) => spot(key, index)),
  };
  if (!place.across) markColumns(kit, lines, made, list);
  return made;
}
