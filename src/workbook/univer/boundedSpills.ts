import {
  ArrayValueObject,
  ErrorType,
  ErrorValueObject,
  IFunctionService,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import type { Injector } from "@univerjs/core";

/** More cells than this no function makes out of nothing: the page's memory would not hold many more. */
const MOST_CELLS = 1_000_000;

type Values = readonly (BaseValueObject | undefined)[];
type Size = readonly [rows: number, columns: number];

/** The whole number an argument stands for; another where it is left out, and 0 where it is none. */
function numberOf(value: BaseValueObject | undefined, otherwise = 1): number {
  if (value === undefined || value.isNull()) return otherwise;
  const cell = value instanceof ArrayValueObject ? value.getFirstCell() : value;
  const number = Number(cell.getValue());
  return Number.isNaN(number) ? 0 : Math.floor(number);
}

const sizeOf = (value: BaseValueObject | undefined): Size =>
  value instanceof ArrayValueObject ? [value.getRowCount(), value.getColumnCount()] : [1, 1];

const rowsByColumns = ([rows, columns]: Values): Size => [numberOf(rows), numberOf(columns)];

/** A list laid out in lines of so many cells, the last one filled up. */
function wrapped([list, count]: Values): Size {
  const [rows, columns] = sizeOf(list);
  const perLine = Math.max(numberOf(count), 1);
  return [Math.ceil((rows * columns) / perLine), perLine];
}

/** How large an answer the functions give whose arguments say so. */
const ANSWER_SIZES: Readonly<Record<string, (values: Values) => Size>> = {
  SEQUENCE: rowsByColumns,
  RANDARRAY: rowsByColumns,
  MAKEARRAY: rowsByColumns,
  MUNIT: ([side]) => [numberOf(side), numberOf(side)],
  EXPAND: ([array, rows, columns]) => {
    const [ownRows, ownColumns] = sizeOf(array);
    return [numberOf(rows, ownRows), numberOf(columns, ownColumns)];
  },
  WRAPROWS: wrapped,
  WRAPCOLS: wrapped,
};

/** In groups of three, as both points and commas would be read otherwise somewhere. */
const grouped = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, "\u202f");

const spillError = (sentence: string): ErrorValueObject =>
  ErrorValueObject.create(ErrorType.SPILL, sentence);

/** Lets no formula ask for more cells than can be held; without this `=MUNIT(1E5)` ends the page. */
export function boundSpills(injector: Injector): void {
  const service = injector.get(IFunctionService);
  for (const [name, answerSize] of Object.entries(ANSWER_SIZES)) {
    const executor = service.getExecutor(name);
    if (!executor) continue;
    const calculate = executor.calculate.bind(executor);
    executor.calculate = (...values) => {
      const [rows, columns] = answerSize(values);
      const size = `${grouped(rows)} × ${grouped(columns)}`;
      if (rows * columns > MOST_CELLS)
        return spillError(
          `${name} would fill ${size} cells; at most ${grouped(MOST_CELLS)} are answered.`,
        );
      const answer = calculate(...values);
      // the engine's way to say that the sheet ends before the answer does
      return answer instanceof ErrorValueObject && answer.getErrorType() === ErrorType.REF
        ? spillError(`${name} would fill ${size} cells, and the sheet ends before.`)
        : answer;
    };
  }
}
