import { CellValueType, InterceptorEffectEnum, type ICellData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import {
  AFTER_CELL_EDIT,
  BEFORE_CELL_EDIT,
  INTERCEPTOR_POINT,
  SheetInterceptorService,
} from "@univerjs/sheets";
import type { Language } from "./createGrid";
import { fromGermanFormula, toGermanFormula } from "./germanFormula";
import { fittedNumber } from "./fittedNumber";
import { shownNumber, typedNumber } from "./typedNumber";

type Cell = ICellData | null | undefined;

const AFTER_NUMBER_FORMATS = 9; // their place is 10, and higher ones come first

/** What was typed, as the grid keeps it. What looks like a number and is none stays a text. */
function asKept(cell: Cell, language: Language): Cell {
  if (!cell) return cell;
  if (cell.f) return language === "de" ? { ...cell, f: fromGermanFormula(cell.f) } : cell;
  if (typeof cell.v !== "string" || cell.p || cell.t === CellValueType.FORCE_STRING) return cell;
  const number = typedNumber(cell.v, language);
  return number === null ? { ...cell, t: CellValueType.FORCE_STRING } : { ...cell, v: number };
}

/** What is kept, as it is edited in German. */
function asEdited(cell: Cell): Cell {
  if (!cell) return cell;
  if (cell.f) return { ...cell, f: toGermanFormula(cell.f) };
  if (typeof cell.v === "number") return { ...cell, v: shownNumber(cell.v, "de") };
  // Percentages come as text with all their digits.
  const percent = typeof cell.v === "string" && /^-?\d+\.\d+%$/.test(cell.v);
  return percent ? { ...cell, v: String(cell.v).replace(".", ",") } : cell;
}

/**
 * Has typed numbers and formulas read, and shown again when edited, in the notation of the bench's language:
 * the grid itself knows the English one only. A number without a format is rounded to what its column shows,
 * where the grid alone would cut it off.
 */
export function applyNotation(api: FUniver, language: () => Language): void {
  const injector = api.getActiveWorkbook()?.getActiveSheet().getInject();
  if (injector === undefined) throw new Error("No workbook is open.");
  const service = injector.get(SheetInterceptorService);
  const { writeCellInterceptor } = service;
  const through = writeCellInterceptor.fetchThroughInterceptors.bind(writeCellInterceptor);
  writeCellInterceptor.fetchThroughInterceptors = ((name: never, filter: never) => {
    const run = through(name, filter) as (cell: Cell, context: unknown) => unknown;
    if (name === AFTER_CELL_EDIT) {
      return (cell: Cell, context: unknown) => run(asKept(cell, language()), context);
    }
    if (name !== BEFORE_CELL_EDIT || language() !== "de") return run;
    return (cell: Cell, context: unknown) => asEdited(run(cell, context) as Cell);
  }) as typeof writeCellInterceptor.fetchThroughInterceptors;

  service.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: AFTER_NUMBER_FORMATS,
    effect: InterceptorEffectEnum.Value,
    handler: (cell, { worksheet, col }, next) =>
      next(
        typeof cell?.v === "number" && cell.t !== CellValueType.BOOLEAN
          ? { ...cell, v: fittedNumber(cell.v, worksheet.getColumnWidth(col), language()) }
          : cell,
      ),
  });
}
