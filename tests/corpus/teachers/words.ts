import { a1, put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import type { MarkedSolution } from "../marks";
import { idealGap, tolerated, type Dissolved } from "../solution";

type Single = Record<"name" | "grams" | "molar" | "particles" | "moles", Spot>;

/** Marks the solution of one substance. */
export function markSample(
  { marked }: Kit,
  {
    name,
    grams,
    molar,
    particles,
    moles,
    ...rest
  }: Single &
    Pick<MarkedSolution, "water" | "constant" | "depression" | "freezingPoint" | "proviso">,
): void {
  marked.solutions.push({
    ...{ names: [name], grams: [grams], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], ...rest },
  });
}

/** How far the ideal law is from the truth at most, in kelvin, as it is written in the language. */
export function nearness(
  { language }: Kit,
  samples: readonly (readonly [Dissolved, grams: number, waterGrams: number])[],
): string {
  const gaps = samples.map(([solute, grams, water]) => idealGap([solute], [grams], water));
  const text = tolerated(Math.max(...gaps));
  return language === "de" ? text.replace(".", ",") : text;
}

/** Formulas down a column, each made from the cells of its row, marked under their heading. */
export function worked(
  { marked }: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  rows: readonly number[],
  plan: {
    readonly formula: (row: number) => string;
    readonly format: string;
    readonly fixed?: readonly Spot[];
  },
): Spot[] {
  const { formula, format, fixed = [] } = plan;
  const spots = rows.map((row) =>
    put(sheet, row, heading.column, shown(`=${formula(row)}`, format)),
  );
  marked.formulaColumns.push({ spots, heading, fixed });
  return spots;
}

/** The cell of a column in a row, as a formula calls it. */
export const inColumn =
  (column: number) =>
  (row: number): string =>
    a1({ sheet: "", row, column });

/** Cells under a heading each, a little table that stands beside the rest; gives its headings. */
export function sideTable(
  sheet: CorpusSheet,
  [row, column]: readonly [row: number, column: number],
  heads: readonly string[],
  lines: readonly (readonly Content[])[],
): Spot[] {
  lines.forEach((cells, index) => putRow(sheet, row + 1 + index, column, cells));
  return putRow(sheet, row, column, heads);
}

/** The cells under a heading. */
export const under = (heading: Spot, count: number, skip = 0): Spot[] =>
  Array.from({ length: count }, (_, index) => ({
    ...heading,
    row: heading.row + 1 + skip + index,
  }));
