import { badInput, isProblem, type Problem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { MAX_COLUMNS, MAX_ROWS, parseCellName, parseRangeName } from "../address";
import { withPlainFunctionNames } from "../functionNames";
import type { CellRange, WorkbookSheet } from "../model";
import type { Archive } from "./archive";
import { CellStore } from "./cellStore";
import { cellValue } from "./cellValue";
import { LIMITS } from "./limits";
import { isTrue, prefixedAttribute, readXml, type Attributes } from "./readXml";
import { SetFilters } from "./setFilters";

/** What all sheets of a workbook share. */
export interface SheetContext {
  readonly archive: Archive;
  readonly sharedStrings: readonly string[];
  readonly formats: readonly (string | undefined)[];
  readonly cellsSoFar: { count: number; texts: number };
}

export interface SheetContent extends Pick<
  WorkbookSheet,
  | "rowCount"
  | "columnCount"
  | "cellAt"
  | "visitCells"
  | "visitFormulas"
  | "merged"
  | "hiddenRows"
  | "hiddenColumns"
  | "filtered"
> {
  readonly tableRelationships: readonly string[];
}

/** Reads one sheet part: a state machine over its tags. */
class SheetReader {
  readonly store: CellStore;
  readonly merged: CellRange[] = [];
  readonly hiddenRows = new Set<number>();
  readonly hiddenColumns = new Set<number>();
  readonly filters = new SetFilters();
  readonly tableRelationships: string[] = [];
  rowCount = 0;
  columnCount = 0;
  private row = -1;
  private column = -1;
  private cell: Attributes = {};
  private formula: Attributes | null = null;
  private formulaText = "";
  private text: string | null = null;
  private inlineText: string | null = null;
  private phonetic = false;
  private poolSize = 1;
  private readonly sharedFormulas = new Map<string, number>();

  constructor(
    private readonly name: string,
    private readonly context: SheetContext,
  ) {
    this.store = new CellStore(context.formats);
  }

  readonly open = (name: string, attributes: Attributes): Problem | null => {
    switch (name) {
      case "c":
        return this.openCell(attributes);
      case "f":
        this.formula = attributes;
        return null;
      case "row":
        return this.openRow(attributes);
      case "rPh":
        this.phonetic = true;
        return null;
      case "is":
        this.inlineText = "";
        return null;
      default:
        return this.openOther(name, attributes);
    }
  };

  readonly close = (name: string, text: string): Problem | null => {
    if (name === "v") this.text = text;
    else if (name === "f") this.formulaText = text;
    else if (name === "t" && this.inlineText !== null && !this.phonetic) this.inlineText += text;
    else if (name === "rPh") this.phonetic = false;
    else if (name === "c") return this.closeCell();
    return null;
  };

  private openOther(name: string, attributes: Attributes): Problem | null {
    if (name === "col" && isTrue(attributes["hidden"])) this.hideColumns(attributes);
    this.filters.open(name, attributes);
    if (name === "tablePart") {
      const id = prefixedAttribute(attributes, "id");
      if (id !== undefined) this.tableRelationships.push(id);
    }
    if (name !== "mergeCell") return null;
    const range = parseRangeName(attributes["ref"] ?? "");
    if (range !== null) this.merged.push(range);
    return this.merged.length > LIMITS.ranges
      ? badInput(`Sheet "${this.name}" has more than ${LIMITS.ranges} merged blocks.`)
      : null;
  }

  private hideColumns({ min, max }: Attributes): void {
    const last = Math.min(Number(max), MAX_COLUMNS);
    for (let column = Math.max(1, Number(min)); column <= last; column += 1) {
      this.hiddenColumns.add(column - 1);
    }
  }

  private openRow(attributes: Attributes): Problem | null {
    const { r } = attributes;
    this.row = r === undefined ? this.row + 1 : Number(r) - 1;
    this.column = -1;
    if (!Number.isInteger(this.row) || this.row < 0 || this.row >= MAX_ROWS) {
      return badInput(
        `Sheet "${this.name}" has a row ${(r ?? String(this.row + 1)).slice(0, 20)}; rows run from 1 to ${MAX_ROWS}.`,
      );
    }
    if (isTrue(attributes["hidden"])) this.hiddenRows.add(this.row);
    return this.store.startRow(this.row)
      ? null
      : badInput(`The file is damaged: sheet "${this.name}" has two rows ${this.row + 1}.`);
  }

  private openCell(attributes: Attributes): Problem | null {
    this.cell = attributes;
    this.formula = this.text = this.inlineText = null;
    this.formulaText = "";
    const { r } = attributes;
    const place = r === undefined ? { row: this.row, column: this.column + 1 } : parseCellName(r);
    if (place === null || place.column >= MAX_COLUMNS || place.row !== this.row) {
      return badInput(
        `The file is damaged: sheet "${this.name}" has a cell at "${(r ?? "nowhere").slice(0, 20)}".`,
      );
    }
    this.column = place.column;
    return null;
  }

  private closeCell(): Problem | null {
    const { t, s } = this.cell;
    const text = this.inlineText ?? this.text;
    const formula = this.formulaNumber();
    if (text === null && formula === 0) return null;
    const value = text === null ? null : cellValue(t, text, this.context.sharedStrings);
    if (value === undefined && !(text?.trim() === "" && formula !== 0)) {
      const where = `cell ${this.cell["r"] ?? ""} of sheet "${this.name}"`;
      return badInput(
        `The file is damaged: ${where} holds "${(text ?? "").slice(0, 40)}" as a value.`,
      );
    }
    this.store.add(this.column, value ?? null, Number(s ?? 0), formula);
    this.rowCount = Math.max(this.rowCount, this.row + 1);
    this.columnCount = Math.max(this.columnCount, this.column + 1);
    return this.countCell();
  }

  private countCell(): Problem | null {
    const { cellsSoFar } = this.context;
    cellsSoFar.count += 1;
    cellsSoFar.texts += this.store.poolSize - this.poolSize;
    this.poolSize = this.store.poolSize;
    if (cellsSoFar.count > LIMITS.cells) {
      return badInput(`The workbook has more than ${LIMITS.cells} cells, the most that are read.`);
    }
    return cellsSoFar.texts > LIMITS.texts
      ? badInput(`The workbook has more than ${LIMITS.texts} different texts and formulas.`)
      : null;
  }

  /** Stores the cell's formula, if any; a cell of a shared formula points to its master's. */
  private formulaNumber(): number {
    if (this.formula === null) return 0;
    const { t, si, ref } = this.formula;
    const shared = t === "shared" && si !== undefined;
    if (this.formulaText === "") return shared ? (this.sharedFormulas.get(si) ?? 0) : 0;
    const spills = t === "array" ? parseRangeName(ref ?? "") : null;
    const index = this.store.addFormula({
      text: withPlainFunctionNames(this.formulaText),
      masterRow: this.row,
      masterColumn: this.column,
      shared,
      ...(spills !== null && { spills }),
    });
    if (shared) this.sharedFormulas.set(si, index);
    return index;
  }
}

/** Reads the cells, hidden rows and columns, filters, merged blocks and tables' references of one sheet. */
export function readSheetPart(
  context: SheetContext,
  name: string,
  partName: string,
): Result<SheetContent> {
  const reader = new SheetReader(name, context);
  const problem = readXml(context.archive, partName, reader);
  if (isProblem(problem)) return problem;
  const { store, rowCount, columnCount, merged, hiddenRows, hiddenColumns } = reader;
  return {
    rowCount,
    columnCount,
    merged,
    hiddenRows,
    hiddenColumns,
    filtered: reader.filters.ranges,
    tableRelationships: reader.tableRelationships,
    cellAt: (row, column) => store.cellAt(row, column),
    visitCells: (visit) => store.visit(visit),
    visitFormulas: (visit) => store.visitFormulas(visit),
  };
}
