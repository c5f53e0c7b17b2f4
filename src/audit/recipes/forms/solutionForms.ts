import { overlaps } from "../../../workbook/references";
import { textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import { headerRole } from "../headings/headerRole";
import type { RecipeBlock } from "../recipeBlock";
import type { SheetTexts } from "../sheetTexts";
import type { Form } from "./form";
import type { FormKind } from "./formLabels";
import { formBlocks } from "./formBlocks";
import { gatherForms } from "./gatherForms";
import { labelledPairs, type LabelledPair } from "./labelledPairs";
import { cutAtLists, cutAtTitles, lanesOf } from "./lanes";
import { solutionRows } from "./solutionRows";
import { isOfStrength, isPerWater } from "./isOfStrength";

/** What tells a class's worked example from any other list of labelled numbers. */
const OF_CLASS = new Set(["molar mass", "moles", "particles", "molality", "cryoscopic constant"]);

const KINDS = new Set<FormKind>(["molar mass", "moles", "particles", "constant"]);

const isOfClass = ({ pairs }: Form): boolean =>
  pairs.some(
    ({ kind, label }) =>
      KINDS.has(kind) || (kind !== "mass" && OF_CLASS.has(headerRole(label) ?? "")),
  );

const isComplete = ({ water, solutes, isOtherSolvent }: Form): boolean =>
  water !== null && solutes.length > 0 && !isOtherSolvent;

function blocksIn(context: FinderContext, pairs: readonly LabelledPair[]): RecipeBlock[] {
  const isMeant = (form: Form) =>
    isComplete(form) && (isOfClass(form) || isOfStrength(context.sheet, form));
  return gatherForms(context, pairs)
    .filter(isMeant)
    .flatMap((form) => formBlocks(context, form));
}

/** Whether a label is one of a class, or of how strong a syrup or brine is. */
const isOfSolution = (label: string): boolean =>
  OF_CLASS.has(headerRole(label) ?? "") || isPerWater(label);

/** A lane cut at its titles where no answer is lost by that: each question has its own data. */
function blocksInLane(context: FinderContext, lane: readonly LabelledPair[]): RecipeBlock[] {
  const parts = cutAtTitles(context.sheet, lane);
  const whole = blocksIn(context, lane);
  if (parts.length < 2) return whole;
  const cut = parts.flatMap((part) => blocksIn(context, part));
  const answersIn = (blocks: readonly RecipeBlock[]) =>
    blocks.reduce((sum, { answers = [] }) => sum + answers.length, 0);
  return cut.length > 0 && answersIn(cut) >= answersIn(whole) ? cut : whole;
}

/**
 * Worked examples of a class: labels with values beside or below them that name a substance, its mass and its
 * water, and work with moles or tell how strong it is. First column by column, then the rest of the sheet as it is read.
 */
export function solutionForms(
  context: FinderContext,
  texts: SheetTexts,
  lists: readonly RecipeBlock[],
): RecipeBlock[] {
  const { sheet } = context;
  const mayBe = [...texts.columnsByRow].some(([row, columns]) =>
    columns.some((column) => isOfSolution(textAt(sheet, row, column))),
  );
  if (!mayBe) return [];
  const labelled = labelledPairs(context, texts);
  const { pairs } = labelled;
  const lanes = lanesOf(sheet, pairs).flatMap((lane) => cutAtLists(lists, lane));
  const found = lanes.flatMap((lane) => blocksInLane(context, lane));
  const isTaken = ({ row, column }: LabelledPair) =>
    found.some(
      ({ range: { top, bottom, left, right } }) =>
        row >= top && row <= bottom && column >= left && column <= right,
    );
  const others = pairs.filter((pair) => !isTaken(pair));
  const examples = [...found, ...blocksIn(context, others)];
  const rows = solutionRows(context, labelled).filter(
    ({ range }) => !examples.some((one) => overlaps(one.range, range)),
  );
  return [...examples, ...rows];
}
