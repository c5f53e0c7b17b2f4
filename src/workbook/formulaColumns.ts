import { eachFormula } from "./eachFormula";
import type { CellRange, WorkbookSheet } from "./model";

/** A formula of a sheet and how far its reading has come. */
export interface FormulaNode {
  /** The sheet, counted from zero. */
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  state: "unread" | "open" | "done";
}

/** The formulas of one column by row; those that are done are skipped in a step, however many they are. */
class FormulaColumn {
  readonly nodes: FormulaNode[] = [];
  private readonly next: number[] = [];

  add(node: FormulaNode): void {
    this.next.push(this.next.length);
    this.nodes.push(node);
  }

  /** The first place at or after `at` whose formula is not done. */
  unfinishedFrom(at: number): number {
    let place = at;
    while (place < this.nodes.length) {
      const forward = this.nodes[place]?.state === "done" ? place + 1 : place;
      const known = Math.max(forward, this.next[place] ?? forward);
      if (known === place) break;
      // Halves the way for whoever comes next.
      this.next[place] = Math.max(known, this.next[known] ?? known);
      place = known;
    }
    return place;
  }

  firstFrom(row: number): number {
    let [low, high] = [0, this.nodes.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.nodes[middle]?.row ?? Infinity) < row) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** The formulas of a sheet, by column. */
export class FormulaColumns {
  readonly nodes: FormulaNode[] = [];
  private readonly columns = new Map<number, FormulaColumn>();

  /** `isWanted` leaves out formulas that cannot matter, before anything is kept of them. */
  constructor(
    content: WorkbookSheet,
    sheet: number,
    isWanted: (formula: string) => boolean = () => true,
  ) {
    eachFormula(content, (row, column, { formula }) => {
      if (formula === undefined || !isWanted(formula)) return;
      const node: FormulaNode = { sheet, row, column, formula, state: "unread" };
      this.nodes.push(node);
      const known = this.columns.get(column) ?? new FormulaColumn();
      this.columns.set(column, known);
      known.add(node);
    });
  }

  /** The formulas of a range that are not done at the moment each is asked for. */
  *unfinishedIn({ top, left, bottom, right }: CellRange): Generator<FormulaNode, undefined> {
    for (const [column, list] of this.columns) {
      if (column < left || column > right) continue;
      let at = list.unfinishedFrom(list.firstFrom(top));
      for (let node = list.nodes[at]; node !== undefined && node.row <= bottom;) {
        yield node;
        at = list.unfinishedFrom(at + 1);
        node = list.nodes[at];
      }
    }
  }
}
