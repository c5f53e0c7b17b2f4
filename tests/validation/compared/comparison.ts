/** One printed figure beside what a cell computes for it. */
export interface ComparedFigure {
  /** What it is a figure of: "sucrose, 12 %". */
  readonly label: string;
  /** The substance or mixture it belongs to, for sums by it. */
  readonly group: string;
  readonly printed: number;
  readonly computed: number;
  /** What the ideal law makes of it; null where there is none to compare. */
  readonly ideal: number | null;
  /** One standard uncertainty that Rimeline states for it; null where it states none. */
  readonly band: number | null;
  /** One standard uncertainty of the printed figure itself; 0 where it is not known. */
  readonly printedBand: number;
}

/** A printed figure for which the cell answers with a sentence instead of a number. */
export interface DeclinedFigure {
  readonly label: string;
  readonly printed: number;
  readonly reason: string;
}

/** What is compared, and the units of its figures and of their misses. */
export const QUANTITIES = {
  freezing: { unit: "°C", missUnit: "K", digits: 3 },
  activity: { unit: "a_w", missUnit: "a_w", digits: 4 },
  share: { unit: "% of the water", missUnit: "points", digits: 2 },
  boiling: { unit: "K above water", missUnit: "K", digits: 2 },
} as const;

export type Quantity = keyof typeof QUANTITIES;

/** Read by a fit, kept back from all fits, or rejected with a reason. */
export type Use = "fit" | "held out" | "set aside";

/** The figures of one source. */
export interface Comparison {
  readonly id: string;
  /** What is compared, in a few words. */
  readonly title: string;
  /** The source as the bibliography has it. */
  readonly source: string;
  readonly use: Use;
  readonly quantity: Quantity;
  /** What a reader has to know besides: how the printed figure came about, why it is set aside. */
  readonly note: string | null;
  readonly figures: readonly ComparedFigure[];
  readonly declined: readonly DeclinedFigure[];
}

export type Row = ComparedFigure | DeclinedFigure;

const isCompared = (row: Row): row is ComparedFigure => "computed" in row;
const isDeclined = (row: Row): row is DeclinedFigure => !isCompared(row);

/** A printed figure that is itself uncertain by so much: by its rounding, its scatter or its composition. */
export const printedWithin = (row: Row, printedBand: number): Row =>
  isCompared(row) ? { ...row, printedBand } : row;

/** A comparison of rows of which some may be declined. */
export function comparisonOf(
  described: Omit<Comparison, "figures" | "declined" | "note"> & { readonly note?: string },
  rows: readonly Row[],
): Comparison {
  return {
    ...described,
    note: described.note ?? null,
    figures: rows.filter(isCompared),
    declined: rows.filter(isDeclined),
  };
}
