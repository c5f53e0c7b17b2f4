import { put, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { freezesAt, type Place, type Problem } from "../layouts/parts";

/** Marks a column of thermometer readings. */
export const readings = (kit: Kit, heading: Spot, spots: readonly Spot[]): void => {
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
};

/** Marks formulas one below the other. */
export const worked = (
  kit: Kit,
  heading: Spot,
  spots: readonly Spot[],
  fixed: readonly Spot[] = [],
): void => {
  kit.marked.formulaColumns.push({ spots, heading, fixed });
};

/** A little table: headings, then rows; gives all its cells, the headings first. */
export const tableAt = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): Spot[][] =>
  rows.map((cells, down) =>
    cells.map((content, right) => put(sheet, row + down, column + right, content)),
  );

/** A little table of temperatures, what was measured in the first column. */
export function thermometers(
  kit: Kit,
  sheet: CorpusSheet,
  place: Place,
  plan: {
    readonly heads: readonly string[];
    readonly lines: readonly string[];
    readonly from: number;
    readonly to: number;
  },
): void {
  const { heads, lines, from, to } = plan;
  const reading = () => shown(Math.round(kit.random.between(from, to) * 10) / 10, "0.0");
  const rows = lines.map((each): Content[] => [each, ...heads.slice(1).map(reading)]);
  const [top, ...cells] = tableAt(sheet, place, [heads, ...rows]);
  heads.slice(1).forEach((_, at) => {
    readings(kit, top![at + 1]!, columnOf(cells, at + 1));
  });
}

/** What a good thermometer says of a solution. */
export const measured = ({ solute, waterGrams, grams }: Problem): number =>
  freezesAt(["water", solute.en], [waterGrams, grams]);

/** How a sample cools until it freezes: a reading for each step. */
export const cooling = (start: number, freezing: number, steps: number): number[] =>
  Array.from({ length: steps }, (_, step) =>
    Number(Math.max(freezing, start - (step * (start - freezing)) / (steps - 4)).toFixed(1)),
  );
