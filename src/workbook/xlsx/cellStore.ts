import type { CellRange, CellVisitor, WorkbookCell, WorkbookValue } from "../model";
import { moveFormula } from "../moveFormula";

/** A formula as stored: its own text, or the shared text of a master cell that is moved here. */
export interface StoredFormula {
  readonly text: string;
  readonly masterRow: number;
  readonly masterColumn: number;
  readonly shared: boolean;
  readonly spills?: CellRange;
}

type Writable<T> = { -readonly [K in keyof T]: T[K] };

const NUMBER = 1;
const TEXT = 2;
const TRUTH = 3;
const ERROR = 4;
const NO_VALUE = 5;

/** A typed array that doubles when it is full. */
function grown<T extends Float64Array | Uint32Array | Uint16Array | Uint8Array>(
  array: T,
  size: number,
): T {
  if (size <= array.length) return array;
  const larger = new (array.constructor as new (length: number) => T)(
    Math.max(size, array.length * 2),
  );
  larger.set(array);
  return larger;
}

/** A cell whose formula is the shared one moved here, which is done when asked for: millions may share one. */
class SharedCell implements WorkbookCell {
  readonly format?: string;
  readonly spills?: CellRange;

  constructor(
    readonly value: WorkbookValue,
    readonly sharedFormula: string,
    private readonly down: number,
    private readonly right: number,
  ) {}

  get formula(): string {
    return moveFormula(this.sharedFormula, this.down, this.right);
  }
}

/**
 * The cells of one sheet in 17 bytes each, in the order of the file. An object per cell would cost
 * 100,000 rows × 10 columns some hundred megabytes.
 */
export class CellStore {
  size = 0;
  private columns = new Uint16Array(64);
  private kinds = new Uint8Array(64);
  private styles = new Uint16Array(64);
  private numbers = new Float64Array(64);
  private formulaIndexes = new Uint32Array(64);
  private readonly texts: string[] = [];
  private readonly textIndex = new Map<string, number>();
  private readonly formulas: (StoredFormula | undefined)[] = [undefined];
  /** The rows in the order of the file, where each begins, and which of them a row is. */
  private rows = new Uint32Array(64);
  private starts = new Uint32Array(64);
  private readonly rowIndex = new Map<number, number>();

  constructor(private readonly formats: readonly (string | undefined)[]) {}

  /** How many texts and formulas are kept. */
  get poolSize(): number {
    return this.texts.length + this.formulas.length;
  }

  /** Begins a row; false when the sheet has had that row already. */
  startRow(row: number): boolean {
    const index = this.rowIndex.size;
    if (this.rowIndex.has(row)) return false;
    this.rowIndex.set(row, index);
    this.rows = grown(this.rows, index + 1);
    this.starts = grown(this.starts, index + 1);
    this.rows[index] = row;
    this.starts[index] = this.size;
    return true;
  }

  addFormula(formula: StoredFormula): number {
    this.formulas.push(formula);
    return this.formulas.length - 1;
  }

  /** Appends a cell to the row begun last. `formula` is a number from addFormula, 0 for none. */
  add(column: number, value: WorkbookValue, style: number, formula: number): void {
    const at = this.size;
    this.makeRoom(at + 1);
    this.columns[at] = column;
    this.styles[at] = style;
    this.formulaIndexes[at] = formula;
    this.storeValue(at, value);
    this.size = at + 1;
  }

  cellAt(row: number, column: number): WorkbookCell | undefined {
    const index = this.indexOfRow(row);
    if (index === undefined) return undefined;
    const [start, end] = [this.starts[index] ?? 0, this.endOfRow(index)];
    // Columns without gaps, the common case, are found at once.
    const guess = start + column - (this.columns[start] ?? 0);
    if (guess >= start && guess < end && this.columns[guess] === column)
      return this.cell(guess, row);
    const at = this.columns.subarray(start, end).indexOf(column);
    return at < 0 ? undefined : this.cell(start + at, row);
  }

  visit(visitor: CellVisitor): void {
    this.visitThose(visitor, () => true);
  }

  visitFormulas(visitor: CellVisitor): void {
    this.visitThose(visitor, (at) => this.formulaIndexes[at] !== 0);
  }

  private visitThose(visitor: CellVisitor, isWanted: (at: number) => boolean): void {
    const rows = this.rows.slice(0, this.rowIndex.size).sort();
    for (const row of rows) {
      const index = this.indexOfRow(row) ?? 0;
      const end = this.endOfRow(index);
      for (let at = this.starts[index] ?? end; at < end; at += 1) {
        if (isWanted(at)) visitor(row, this.columns[at] ?? 0, this.cell(at, row));
      }
    }
  }

  private indexOfRow(row: number): number | undefined {
    // Rows without gaps, the common case, are found at once.
    const guess = row - (this.rows[0] ?? 0);
    return guess >= 0 && guess < this.rowIndex.size && this.rows[guess] === row
      ? guess
      : this.rowIndex.get(row);
  }

  private endOfRow(index: number): number {
    return index + 1 < this.rowIndex.size ? (this.starts[index + 1] ?? 0) : this.size;
  }

  private makeRoom(size: number): void {
    this.columns = grown(this.columns, size);
    this.kinds = grown(this.kinds, size);
    this.styles = grown(this.styles, size);
    this.numbers = grown(this.numbers, size);
    this.formulaIndexes = grown(this.formulaIndexes, size);
  }

  private storeValue(at: number, value: WorkbookValue): void {
    if (typeof value === "number") this.store(at, NUMBER, value);
    else if (typeof value === "boolean") this.store(at, TRUTH, value ? 1 : 0);
    else if (typeof value === "string") this.store(at, TEXT, this.textNumber(value));
    else if (value === null) this.store(at, NO_VALUE, 0);
    else this.store(at, ERROR, this.textNumber(value.error));
  }

  private store(at: number, kind: number, number: number): void {
    this.kinds[at] = kind;
    this.numbers[at] = number;
  }

  private textNumber(text: string): number {
    const known = this.textIndex.get(text);
    if (known !== undefined) return known;
    this.texts.push(text);
    this.textIndex.set(text, this.texts.length - 1);
    return this.texts.length - 1;
  }

  private value(at: number): WorkbookValue {
    const number = this.numbers[at] ?? 0;
    switch (this.kinds[at]) {
      case NUMBER:
        return number;
      case TRUTH:
        return number === 1;
      case TEXT:
        return this.texts[number] ?? "";
      case ERROR:
        return { error: this.texts[number] ?? "" };
      default:
        return null;
    }
  }

  // Assembled without spreading: an audit asks for every cell some thirty times.
  private cell(at: number, row: number): WorkbookCell {
    const stored = this.formulas[this.formulaIndexes[at] ?? 0];
    const value = this.value(at);
    const cell: Writable<WorkbookCell> =
      stored?.shared === true
        ? new SharedCell(
            value,
            stored.text,
            row - stored.masterRow,
            (this.columns[at] ?? 0) - stored.masterColumn,
          )
        : { value };
    const format = this.formats[this.styles[at] ?? 0];
    if (format !== undefined) cell.format = format;
    if (stored === undefined) return cell;
    if (!stored.shared) cell.formula = stored.text;
    if (stored.spills !== undefined) cell.spills = stored.spills;
    return cell;
  }
}
