import type { ResultUnit } from "./resultLabel";
import type { ResultRole } from "./resultRole";

type Range = readonly [from: number, to: number];

/**
 * What may be typed as an answer, mistaken or not, in our units. No mix freezes below pure ethanol (−114 °C, CRC
 * Handbook); above, a depression without its sign and °F taken for °C find room. A share that is a hundred times too
 * large is a per cent in a cell that shows per cent.
 */
const RANGES: Readonly<Record<ResultRole, Range>> = {
  "freezing point": [-130, 60],
  depression: [-130, 130],
  molality: [0, 200],
  "ice fraction": [0, 100],
};

const FAHRENHEIT: Range = [-205, 140];

/** Whether a typed number can be meant as an answer; beyond that its label is of something else: of a time, a mass, a price. */
export function canBe(role: ResultRole, value: number, unit: ResultUnit): boolean {
  const [from, to] = unit === "°F" ? FAHRENHEIT : RANGES[role];
  const ours = unit === "%" ? value / 100 : value;
  return ours >= from && ours <= to;
}
