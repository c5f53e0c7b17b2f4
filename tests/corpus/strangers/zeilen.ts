import {
  a1,
  put,
  putRow,
  sheetNamed,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import type { Kit } from "../kit";
import { sumOf, type Place } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";

/** Writes a recipe line by line; gives the cells column by column. */
export function lines(
  sheet: CorpusSheet,
  { row, column }: Place,
  made: MadeRecipe,
  contents: (name: string, grams: number, index: number) => readonly Content[],
): Spot[][] {
  const rows = made.names.map((name, index) =>
    putRow(sheet, row + index, column, contents(name, made.grams[index]!, index)),
  );
  return rows[0]!.map((_, at) => rows.map((cells) => cells[at]!));
}

export interface Beside {
  readonly heading: Spot;
  readonly formula: (cell: string) => string;
  readonly fixed?: readonly Spot[];
  readonly format?: string;
}

/** A column of formulas under a heading, each reading the cell of another column in its row. */
export function beside(kit: Kit, cells: readonly Spot[], plan: Beside): Spot[] {
  const { heading, formula, fixed = [], format } = plan;
  const sheet = sheetNamed(kit.marked.book, heading.sheet);
  const spots = cells.map((cell) => {
    const content = formula(a1(cell));
    return put(sheet, cell.row, heading.column, format ? shown(content, format) : content);
  });
  kit.marked.formulaColumns.push({ spots, heading, fixed });
  return spots;
}

/** The sum under a column. */
export function under(kit: Kit, parts: readonly Spot[], format?: string): Spot {
  const { sheet, row, column } = parts.at(-1)!;
  const place = { row: row + 1, column };
  return sumOf(kit, sheetNamed(kit.marked.book, sheet), place, parts, format);
}
