import { isFormula, retype, typedAt, type Spot } from "../book";
import type { MarkedBook } from "../marks";
import { linesOf, one, type Variant } from "../mutation";
import type { Chance } from "../random";

/** The number that is typed at a spot; null where there is a formula or something else. */
function typedNumber({ book }: MarkedBook, spot: Spot): number | null {
  const content = typedAt(book, spot)?.content;
  return typeof content === "number" ? content : null;
}

/** As people type it when the sheet does not take it for a number. */
const WAYS: readonly ((value: number) => string)[] = [
  (value) => String(value).replace(".", ","),
  (value) => value.toFixed(1).replace(".", ","),
  (value) => `${value} `,
  (value) => value.toFixed(2),
];

const asText = (spotsOf: (marked: MarkedBook) => readonly Spot[]): Variant => ({
  apply: (marked, random: Chance) => {
    const spot = one(
      random,
      spotsOf(marked).filter((each) => typedNumber(marked, each) !== null),
    );
    if (spot === null) return null;
    retype(marked.book, spot, random.pick(WAYS)(typedNumber(marked, spot)!));
    return [spot];
  },
});

const isSame = (one: Spot, other: Spot): boolean =>
  one.sheet === other.sheet && one.row === other.row && one.column === other.column;

/** Typed numbers with decimals in columns of such numbers, prices for example, that are no amounts. */
function columnSpots(marked: MarkedBook): Spot[] {
  const amounts = marked.recipes.flatMap(linesOf);
  return marked.book.sheets.flatMap(({ name, cells }) => {
    const isNumber = (row: number, column: number) => {
      const cell = cells[row]?.[column];
      return typeof cell?.content === "number" || isFormula(cell);
    };
    const isAmongNumbers = (row: number, column: number) =>
      (isNumber(row - 1, column) && isNumber(row + 1, column)) ||
      (isNumber(row - 1, column) && isNumber(row - 2, column)) ||
      (isNumber(row + 1, column) && isNumber(row + 2, column));
    return cells.flatMap((line, row) =>
      line.flatMap((cell, column) => {
        const spot = { sheet: name, row, column };
        const isDecimal = typeof cell?.content === "number" && !Number.isInteger(cell.content);
        const isAble = isDecimal && isAmongNumbers(row, column);
        return isAble && !amounts.some((each) => isSame(each, spot)) ? [spot] : [];
      }),
    );
  });
}

/** Numbers typed as text that are no amounts: inputs, temperatures and shares, stated results, prices. */
export const textNumberVariants: readonly Variant[] = [
  asText(({ inputs }) => inputs.map(({ value }) => value)),
  asText(({ numberColumns }) => numberColumns.flatMap(({ spots }) => spots)),
  asText(({ recipes }) =>
    recipes.flatMap(({ results }) => results.filter(({ typed }) => typed).map(({ spot }) => spot)),
  ),
  asText(columnSpots),
];
