import { eachCell } from "../../workbook/eachCell";
import type { WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import type { AmountText } from "../recipes/amounts/amountText";
import { textAt } from "../recipes/cells";
import { isOneRow, type RecipeBlock } from "../recipes/recipeBlock";
import { columnContext, isMostlyNumbers, rowContext, type NumberContext } from "./numberContext";
import { countsOn } from "./countsOn";
import { isTimetable } from "./isTimetable";
import { numericReaders, type CellOf, type Reader } from "./numericReaders";
import { numberText } from "./numberText";

/** A number that is a text where a sheet calculates or lists numbers, other than an amount of a recipe. */
export interface TextNumber extends CellOf {
  readonly text: string;
  readonly read: AmountText;
  /** What asks for a number there; "" where only formulas and neighbours do. */
  readonly label: string;
  readonly readers: readonly Reader[];
}

/** A sheet on which all numbers are texts is written, not calculated. */
const LEAST_NUMBERS = 3;
/** More texts than these are how a program wrote the file. */
const MOST_TEXTS = 2000;

type Candidate = Omit<TextNumber, "label" | "readers">;

function amountsOf(block: RecipeBlock): (row: number, column: number) => boolean {
  const [rows, columns] = [new Set<number>(), new Set<number>()];
  const isDown = block.layout === "down" && !isOneRow(block);
  for (const { line } of block.recipes) (isDown ? columns : rows).add(line);
  for (const name of block.names) (isDown ? rows : columns).add(isDown ? name.row : name.column);
  const own = block.names.flatMap(({ amountAt }) => amountAt ?? []);
  return (row, column) =>
    (rows.has(row) && columns.has(column)) ||
    own.some((place) => place.row === row && place.column === column);
}

function candidatesOn({ blocks }: AuditContext, sheet: WorkbookSheet): Candidate[] {
  const isAmount = blocks.filter((block) => block.sheet === sheet).map(amountsOf);
  const found: Candidate[] = [];
  let numbers = 0;
  eachCell(sheet, (row, column, { value, formula }) => {
    if (typeof value === "number" || formula !== undefined) numbers += 1;
    if (formula !== undefined || typeof value !== "string") return;
    const read = numberText(value);
    if (read === null || isAmount.some((test) => test(row, column))) return;
    found.push({ sheet, row, column, text: value, read });
  });
  return numbers < LEAST_NUMBERS || found.length > MOST_TEXTS ? [] : found;
}

/** Ingredients are no labels of what stands in their rows, whatever words they have. */
const namesIn = ({ blocks }: AuditContext): ReadonlySet<string> =>
  new Set(
    blocks.flatMap(({ sheet, names }) =>
      names.map(({ row, column }) => textAt(sheet, row, column)),
    ),
  );

const hasDecimals = ({ text }: Candidate): boolean => /\d[.,]\d/.test(text);

const isAlone = ({ numbers, words }: NumberContext): boolean => numbers === 0 && words === 0;

/** The label by which a text is a number, "" where only formulas or neighbours say so; null where nothing does. */
function labelFor(candidate: Candidate, names: ReadonlySet<string>, readers: readonly Reader[]) {
  const { sheet } = candidate;
  if (readers.length === 0 && countsOn(sheet, candidate)) return null;
  const [down, along] = [columnContext(sheet, candidate), rowContext(sheet, candidate)];
  // Texts side by side without a number among them head columns: years, trials.
  if (along.texts > 1 && along.numbers === 0 && down.label === "") return null;
  const isOfRow = along.label !== "" && !names.has(along.label);
  if (isOfRow && along.says === "a number" && along.numbers === 0) return along.label;
  if (down.says === "a number" && isMostlyNumbers(down, 1)) return down.label;
  if (down.says === "a name") return null;
  if (isOfRow && along.says === "a name") return null;
  if (isOfRow && along.says === "a number" && isMostlyNumbers(along, 1)) return along.label;
  // Below a heading that has one number of its own stands whatever follows in a form.
  const isFirst = textAt(sheet, candidate.row - 1, candidate.column) === down.label;
  const isOfForm = isFirst && isMostlyNumbers(along, 2);
  const isAsked = down.says === "a number" && (isAlone(down) || isOfForm);
  if (isAsked && !isTimetable(sheet, candidate, down.label)) return down.label;
  if (readers.length > 0) return isOfRow ? along.label : down.label;
  return isMostlyNumbers(down, 3) && hasDecimals(candidate) ? down.label : null;
}

/** Numbers typed as text in prices, temperatures, yields, shares, results and inputs. */
export function textNumbersElsewhere(context: AuditContext): TextNumber[] {
  const candidates = context.workbook.sheets.flatMap((sheet) => candidatesOn(context, sheet));
  const readers = numericReaders(context.workbook, candidates);
  const names = namesIn(context);
  return candidates.flatMap((candidate, at) => {
    const own = readers[at] ?? [];
    const label = labelFor(candidate, names, own);
    return label === null ? [] : [{ ...candidate, label, readers: own }];
  });
}
