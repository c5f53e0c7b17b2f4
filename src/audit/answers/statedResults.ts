import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { canBe } from "./canBe";
import { copiedDepressions } from "./copiedDepressions";
import { fitsUnit } from "./fitsUnit";
import { answerAt, type LabelledAnswer } from "./labelledAnswer";
import { negatedDepressions } from "./negatedDepressions";
import { withNegatedPoints } from "./negatedPoints";
import { withoutDifferences } from "./withoutDifferences";
import { textAt } from "../recipes/cells";
import type { Place, Recipe, RecipeBlock } from "../recipes/recipeBlock";
import { labelledTemperatureC, resultUnit, type ResultUnit } from "./resultLabel";
import { resultAnswers } from "./resultAnswers";
import { resultRole, type ResultRole } from "./resultRole";

/** A number on the sheet that is labelled as a property of a recipe. */
export interface StatedResult extends Place {
  readonly role: ResultRole;
  readonly sheet: WorkbookSheet;
  readonly label: string;
  readonly value: number;
  readonly unit: ResultUnit;
  /** The temperature an ice share is for, when the label tells. */
  readonly temperatureC: number | null;
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
}

/** "fp is down by (K)": thermometers show °C, and only a difference is told in kelvin. */
const IN_KELVIN = /[([/,] ?K[)\]]?$/;
const WARMEST_DIFFERENCE_K = 150;

function resultAt(answer: LabelledAnswer, said = resultRole(answer.label)): StatedResult[] {
  const { sheet, label, row, column } = answer;
  const cell = sheet.cellAt(row, column);
  if (said === null || typeof cell?.value !== "number") return [];
  const isDifference =
    said === "freezing point" && IN_KELVIN.test(label) && cell.value < WARMEST_DIFFERENCE_K;
  const role = isDifference ? "depression" : said;
  const beside = textAt(sheet, row, column + 1);
  if (!fitsUnit(role, beside, cell)) return [];
  const unit = resultUnit(label, beside, cell, role);
  const { value } = cell;
  // What a formula gives is told whatever it is.
  if (cell.formula === undefined && !canBe(role, value, unit)) return [];
  const temperatureC = labelledTemperatureC(label);
  const { block, recipe } = answer;
  // Written out: copies by spreading take twice the memory, and a ledger has a hundred thousand.
  return [{ role, sheet, label, row, column, value, unit, temperatureC, block, recipe }];
}

/** Answers of worked examples and of rows that their formulas tell, whatever their labels say. */
const toldByFormula = (blocks: readonly RecipeBlock[]): StatedResult[] =>
  blocks.flatMap((block) =>
    [...(block.answers ?? []), ...(block.worked ?? [])].flatMap(
      ({ role, label, sheet, ...place }) => {
        const [recipe] = block.recipes;
        const isTold = role !== undefined && resultRole(label) !== role && recipe !== undefined;
        const answer = isTold ? answerAt(block, recipe, label, place, sheet) : null;
        return answer === null ? [] : resultAt(answer, role);
      },
    ),
  );

/** Finds the labelled answers of a workbook and the recipe each belongs to. */
export function statedResults(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
): readonly StatedResult[] {
  const labelled = resultAnswers(workbook, blocks).flatMap((one) => resultAt(one));
  const own = withoutDifferences([...labelled, ...toldByFormula(blocks)]);
  const told = withNegatedPoints(own);
  const isTold = (one: StatedResult) =>
    told.some(
      ({ sheet, row, column }) => sheet === one.sheet && row === one.row && column === one.column,
    );
  const linked = negatedDepressions(told).filter((one) => !isTold(one));
  return [...told, ...linked, ...copiedDepressions(told)];
}
