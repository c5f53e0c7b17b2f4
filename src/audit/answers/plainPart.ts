import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { rangesRead } from "../formulas/rangesRead";
import { textAt } from "../recipes/cells";
import { plainWords } from "../recipes/headings/plainWords";
import { amountPlace, type RecipeBlock } from "../recipes/recipeBlock";
import { isAnswer, type LabelledAnswer } from "./labelledAnswer";
import type { Part } from "./partLabel";
import { readsAmounts } from "./recipeInBlock";
import { saysAnswer } from "./saysAnswer";

/** "Water", "Wassermenge (g)", "Amount of sugar": an ingredient's name or an answer, which its place tells. */
const PLAIN =
  /^(?:(?:the|all|g|grams(?: of)?|gramm|amount of(?: the)?|mass of(?: the)?|weight of(?: the)?|gewicht (?:an|des)|menge(?: an)?|masse) )?(water|wasser|sugars?|zucker)[ -]?(?:amount|mass|content|menge|masse|gehalt)?(?: there)?(?:,? [(]?(?:ber|berechnet|gerechnet|errechnet|rechnerisch|calc|calculated|computed|worked out)\.?[)]?)?:?(?: ?[([,/]? ?(?:in )?(?:g|kg|grams?|gramm)[)\]]?)?:?$/;

/** "Water, g for 10", "Wasser (g) für 10 Gäste": of so much as serves so many, no mass or volume. */
const FOR_SO_MANY =
  /,? ?[([]?(?:for|serves|für|reicht für) (\d+)(?: (?!(?:k?g|[mc]?l|lit\w*|grams?|kilos?|gramm)(?!\p{L}))\p{L}+)?[)\]]?(?= ?[([]g[)\]]$|$)/u;

/** The part that a label may mean when it stands among answers; null when it says none. */
export function plainPartOf(label: string): Part | null {
  const [, word] = PLAIN.exec(plainWords(label).replace(FOR_SO_MANY, "")) ?? [];
  if (word === undefined) return null;
  return /^w/.test(word) ? "water" : "sugars";
}

/** Whether an answer for so many is for as many as the heading of the amounts says, or says nothing of it. */
function isForAsMany({ label, recipe }: LabelledAnswer): boolean {
  const [, count] = FOR_SO_MANY.exec(plainWords(label)) ?? [];
  return count === undefined || recipe.title.split(/\D+/).includes(count);
}

/** Labels stand at most this far left or right of their answer. */
const [LEFT, RIGHT] = [4, 2];

/** A table's headings stand at most this far above its answers. */
const MOST_ROWS = 20;

/** The row in which a number's column is headed: right above it, or above the numbers that stand there. */
function headingRow({ sheet, row, column, block }: LabelledAnswer): number {
  // Beside names that run across, the heading is that of all rows.
  const isBeside = block.sheet === sheet && row >= block.range.top && row <= block.range.bottom;
  if (block.layout === "across" && isBeside) return block.headerRow ?? row - 1;
  const isNumber = (at: number) => typeof sheet.cellAt(at, column)?.value === "number";
  const above = Array.from({ length: MOST_ROWS }, (_, at) => row - 1 - at);
  return above.find((at) => !isNumber(at)) ?? row - 1;
}

/** Whether an answer stands right above, below or beside a cell. */
function isAmongAnswers(answer: LabelledAnswer): boolean {
  const { sheet, row, column, block } = answer;
  // Of recipes in columns the labels stand below the names, however far left.
  const near = Array.from({ length: LEFT + RIGHT + 1 }, (_, at) => column - LEFT + at);
  const labels = block.layout === "down" ? [...near, block.names[0]?.column ?? column] : near;
  const isBeside = [row - 1, row + 1].some(
    (other) =>
      isAnswer(sheet, other, column) && labels.some((at) => saysAnswer(textAt(sheet, other, at))),
  );
  const heading = headingRow(answer);
  return (
    isBeside ||
    [column - 1, column + 1].some(
      (other) => isAnswer(sheet, row, other) && saysAnswer(textAt(sheet, heading, other)),
    )
  );
}

type Places = ReadonlyMap<WorkbookSheet, ReadonlySet<string>>;

const known = new WeakMap<readonly RecipeBlock[], Places>();

/** The columns in which a list gives its amounts, or gives them again as shares or for more batches. */
const columnsOfAmounts = ({ layout, roles }: RecipeBlock): readonly number[] =>
  layout === "down"
    ? [...roles].flatMap(([column, role]) => (role === "amount" ? column : []))
    : [];

/** The cells in which the amounts of some recipes stand. */
export function amountsOf(blocks: readonly RecipeBlock[]): Places {
  const before = known.get(blocks);
  if (before !== undefined) return before;
  const places = new Map<WorkbookSheet, Set<string>>();
  for (const block of blocks) {
    const here = places.get(block.sheet) ?? new Set<string>();
    places.set(block.sheet, here);
    for (const recipe of block.recipes) {
      for (const name of block.names) {
        const { row, column } = amountPlace(block, recipe, name);
        here.add(`${row},${column}`);
      }
    }
    for (const { row } of block.names) {
      for (const column of columnsOfAmounts(block)) here.add(`${row},${column}`);
    }
  }
  known.set(blocks, places);
  return places;
}

/** Whether a plain label's number is an answer: no amount itself, it reads the recipe's or stands among answers. */
export function isPlainAnswer(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  answer: LabelledAnswer,
): boolean {
  const { sheet, row, column, block, recipe } = answer;
  if (amountsOf(blocks).get(sheet)?.has(`${row},${column}`) === true) return false;
  const formula = sheet.cellAt(row, column)?.formula;
  const read = formula === undefined ? [] : rangesRead(workbook)(sheet, formula);
  return isForAsMany(answer) && (readsAmounts(read, { block, recipe }) || isAmongAnswers(answer));
}
