import { quotedSheet } from "../../../src/workbook/quotedSheet";
import { addSheet, isFormula, over, putRow, sheetNamed, span, type Spot } from "../book";
import { namedCells } from "../calculate";
import { parseFormula, type Term } from "../formula";
import type { MarkedBook } from "../marks";
import {
  FEEDS_ERRORS,
  WRONG_RESULT,
  numberAt,
  one,
  type Mutation,
  type Variant,
} from "../mutation";
import type { Chance } from "../random";

/** A formula that counts all the rows of some cells, whether they are shown or not. */
interface Count {
  readonly spot: Spot;
  readonly formula: string;
  readonly isSum: boolean;
  readonly cells: readonly Spot[];
}

/** What adds up, averages or takes for a mix all that it is given; SUBTOTAL and AGGREGATE do not. */
const COUNTS = /^(SUM|SUMPRODUCT|AVERAGE|MIN|MAX|COUNT|COUNTA|RIME\..*)$/;

function cellsOf({ book }: MarkedBook, term: Term, own: string): Spot[] {
  const cells = term.kind === "named" ? namedCells(book, term) : term;
  if (cells.kind !== "cells") return [];
  const { from, to } = cells;
  return Array.from({ length: to.row - from.row + 1 }, (_, down) =>
    Array.from({ length: to.column - from.column + 1 }, (_unused, along) => ({
      sheet: cells.sheet ?? own,
      ...{ row: from.row + down, column: from.column + along },
    })),
  ).flat();
}

function countedBy(marked: MarkedBook, term: Term, own: string): Spot[] {
  if (term.kind !== "call") return [];
  const inner = term.parts.flatMap((part) => countedBy(marked, part, own));
  const direct = term.parts.map((part) => cellsOf(marked, part, own));
  return COUNTS.test(term.name)
    ? [...direct.filter((cells) => cells.length > 1).flat(), ...inner]
    : inner;
}

const countsIn = (marked: MarkedBook): Count[] =>
  marked.book.sheets.flatMap(({ name: sheet, cells: lines }) =>
    lines.flatMap((line, row) =>
      line.flatMap((cell, column) => {
        const formula = isFormula(cell) ? cell.content.slice(1) : "";
        const isRead = formula !== "" && !/\[\d|_xll/.test(formula);
        const cells = isRead ? countedBy(marked, parseFormula(formula), sheet) : [];
        const spot = { sheet, row, column };
        return cells.length === 0 ? [] : [{ spot, formula, cells, isSum: /^SUM\(/.test(formula) }];
      }),
    ),
  );

const rowsOf = (cells: readonly Spot[]): number[] => [...new Set(cells.map(({ row }) => row))];

/** Sets a filter over the rows of some cells and hides some of them; not the last that is shown. */
function setFilter(marked: MarkedBook, cells: readonly Spot[], random: Chance): number[] {
  const block = over(cells);
  const sheet = sheetNamed(marked.book, cells[0]!.sheet);
  const table = sheet.tables.find(
    ({ range: { top, bottom } }) => top < block.top && bottom >= block.bottom,
  );
  const right = Math.max(
    ...sheet.cells.slice(block.top, block.bottom + 1).map((line) => line.length - 1),
  );
  sheet.filtered.push(
    table === undefined
      ? { top: Math.max(0, block.top - 1), left: 0, bottom: block.bottom, right }
      : { ...table.range, bottom: table.range.bottom - Number(table.hasTotals) },
  );
  const rows = rowsOf(cells.filter((cell) => Number.isFinite(numberAt(marked, cell))));
  const count = random.whole(1, Math.max(1, Math.min(3, rows.length - 2)));
  const from = random.whole(0, rows.length - count);
  const hidden = rows.slice(from, from + count);
  for (const row of hidden) sheet.hiddenRows.add(row);
  return hidden;
}

/** The formulas still shown that count what is hidden. */
const countingHidden = (marked: MarkedBook, sheet: string, hidden: readonly number[]): Spot[] =>
  countsIn(marked)
    .filter(({ spot }) => spot.sheet !== sheet || !hidden.includes(spot.row))
    .filter(({ cells }) =>
      cells.some(
        (cell) =>
          cell.sheet === sheet &&
          hidden.includes(cell.row) &&
          Number.isFinite(numberAt(marked, cell)),
      ),
    )
    .map(({ spot }) => spot);

/** Sums down a list of at least three lines, the sum standing outside of it. */
const sumsDown = (marked: MarkedBook): Count[] =>
  countsIn(marked).filter(
    ({ isSum, cells, spot }) =>
      isSum &&
      rowsOf(cells).length >= 3 &&
      cells[0]!.row > 0 &&
      (spot.sheet !== cells[0]!.sheet || !rowsOf(cells).includes(spot.row)),
  );

type After = (marked: MarkedBook, sum: Count, random: Chance) => void;

/** Filters the rows of a sum. */
const filtered = (after: After = () => undefined): Variant => ({
  apply: (marked, random) => {
    const sum = one(random, sumsDown(marked));
    if (sum === null) return null;
    const hidden = setFilter(marked, sum.cells, random);
    after(marked, sum, random);
    const spots = countingHidden(marked, sum.cells[0]!.sheet, hidden);
    return spots.length === 0 ? null : spots;
  },
});

/** Has every sum of the same rows count the rows shown only, as is right: what else counts them all is not. */
const sumsTheShown =
  (call: string): After =>
  (marked, { cells }) => {
    const rowsIn = (spots: readonly Spot[]) => `${spots[0]!.sheet} ${rowsOf(spots).join()}`;
    for (const { spot, isSum, cells: others } of countsIn(marked)) {
      if (!isSum || spot.sheet !== cells[0]!.sheet || rowsIn(others) !== rowsIn(cells)) continue;
      const line = sheetNamed(marked.book, spot.sheet).cells[spot.row]!;
      line[spot.column] = { ...line[spot.column]!, content: `=${call}${span(others)})` };
    }
  };

/** Takes the sum over to a sheet of its own, as an overview does. */
const onAnotherSheet: After = (marked, { cells }) => {
  const name = cells[0]!.sheet;
  const overview = addSheet(marked.book, "Overview");
  putRow(overview, 0, 0, ["Sheet", "Sum"]);
  putRow(overview, 1, 0, [name, `=SUM(${quotedSheet(name)}!${span(cells)})`]);
};

/** Sums that count what a filter hides. */
export const filterMutations: readonly Mutation[] = [
  {
    rule: "filtered-rows-in-sum",
    variants: [
      filtered(),
      filtered(sumsTheShown("SUBTOTAL(109,")),
      filtered(sumsTheShown("AGGREGATE(9,5,")),
      filtered((marked, sum, random) => {
        sumsTheShown("SUBTOTAL(109,")(marked, sum, random);
        onAnotherSheet(marked, sum, random);
      }),
    ],
    // A subtotal that leaves rows out is no sum of the rows above it, and the recipe functions refuse it. What is
    // worked out from it and from all rows ("all but water") is wrong, too.
    fair: { ...FEEDS_ERRORS, ...WRONG_RESULT },
  },
];
