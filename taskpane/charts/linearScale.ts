import { nice, ticks } from "d3-array";

type Ends = readonly [number, number];

/** From a quantity to its place in a picture. */
export interface LinearScale {
  (value: number): number;
  /** Round values along it, about so many. */
  readonly ticks: (count: number) => readonly number[];
}

/** The scale that carries one pair of ends onto the other; either pair may run downward. */
export function linearScale([from, to]: Ends, [start, end]: Ends): LinearScale {
  const place = (value: number) => start + ((value - from) / (to - from)) * (end - start);
  return Object.assign(place, { ticks: (count: number) => ticks(from, to, count) });
}

const NICE_COUNT = 10;

/** The ends, moved outward to round values. */
export function niceEnds([from, to]: Ends): Ends {
  const [least, most] = nice(Math.min(from, to), Math.max(from, to), NICE_COUNT);
  return from <= to ? [least, most] : [most, least];
}
