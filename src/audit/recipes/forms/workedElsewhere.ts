import { eachFormula } from "../../../workbook/eachFormula";
import type { Workbook, WorkbookSheet } from "../../../workbook/model";
import { rangesRead } from "../../formulas/rangesRead";
import { isClassBlock } from "../classSheet";
import type { FinderContext } from "../finderContext";
import {
  amountPlace,
  isOneRow,
  type ExampleAnswer,
  type Place,
  type RecipeBlock,
} from "../recipeBlock";
import type { SaidPlace } from "../saidOf";
import type { SheetTexts } from "../sheetTexts";
import { answerOf } from "./answerOf";
import { labelledPairs, type LabelledPair } from "./labelledPairs";
import { keyOf } from "./rolesByFormula";

/** What the finders know of a sheet. */
export interface SheetToRead {
  readonly context: FinderContext;
  readonly texts: SheetTexts;
}

/** A cell that divides the mass of a solution, or works with it, and what it reads besides. */
interface Step extends Place {
  readonly sheet: WorkbookSheet;
  readonly reads: readonly SheetCell[];
}

interface SheetCell extends Place {
  readonly sheet: WorkbookSheet;
}

const DETAILS = ["molar mass", "moles", "particles"] as const;
/** A step of a calculation is short. */
const LONGEST = 120;

const cellKey = ({ sheet, ...place }: SheetCell): string => `${keyOf(place)} ${sheet.name}`;

/** Rows of a table that say what is dissolved in how much water, and nothing of moles; by the cell of the mass. */
function bareSolutions(blocks: readonly RecipeBlock[]): Map<string, RecipeBlock> {
  const bare = blocks.filter((block) => isOneRow(block) && !isClassBlock(block));
  return new Map(
    bare.flatMap((block) => {
      const [[name], [recipe]] = [block.names, block.recipes];
      if (name === undefined || recipe === undefined) return [];
      return [[cellKey({ sheet: block.sheet, ...amountPlace(block, recipe, name) }), block]];
    }),
  );
}

/** The formulas of a workbook that read the mass of one solution, by solution. */
function stepsOf(
  workbook: Workbook,
  solutions: ReadonlyMap<string, RecipeBlock>,
): Map<RecipeBlock, Step[]> {
  const steps = new Map<RecipeBlock, Step[]>();
  const read = rangesRead(workbook);
  for (const sheet of workbook.sheets) {
    eachFormula(sheet, (row, column, { formula }) => {
      if (formula === undefined || formula.length > LONGEST) return;
      const reads = read(sheet, formula).flatMap(({ sheet: on, range }) =>
        range.top === range.bottom && range.left === range.right
          ? [{ sheet: on, row: range.top, column: range.left }]
          : [],
      );
      const [of, ...more] = reads.flatMap((cell) => solutions.get(cellKey(cell)) ?? []);
      if (of !== undefined && more.length === 0)
        steps.set(of, [...(steps.get(of) ?? []), { sheet, row, column, reads }]);
    });
  }
  return steps;
}

/** The labelled values of a sheet that are of a calculation with moles, by cell. */
function pairsByCell({ context, texts }: SheetToRead): ReadonlyMap<string, LabelledPair> {
  const { pairs, columns } = labelledPairs(context, texts);
  return new Map(
    [...columns, ...pairs].flatMap((pair) =>
      pair.values.map((value) => [keyOf(value), pair] as const),
    ),
  );
}

/**
 * The values that stand with a step in its row or, where each solution has a column, in its column. A step whose words
 * say nothing stands as what it reads there does.
 */
function besides(pairs: ReadonlyMap<string, LabelledPair>, step: Step): readonly SheetCell[] {
  const here = step.reads.filter(({ sheet }) => sheet === step.sheet);
  const [own] = [step, ...here].flatMap((cell) => pairs.get(keyOf(cell)) ?? []);
  const line = own?.isBelow === true ? "row" : "column";
  const others = [...new Set(pairs.values())].filter(({ isBelow }) => isBelow === own?.isBelow);
  return own === undefined
    ? []
    : others.flatMap(({ values }) =>
        values
          .filter((value) => value[line] === step[line])
          .map((value) => ({ ...value, sheet: step.sheet })),
      );
}

/** What the steps of a solution's calculation, what they read and what stands beside them say of it. */
function detailsOf(
  steps: readonly Step[],
  pairsOn: (sheet: WorkbookSheet) => ReadonlyMap<string, LabelledPair>,
): Map<(typeof DETAILS)[number], SaidPlace> {
  const details = new Map<(typeof DETAILS)[number], SaidPlace>();
  const cells = [
    ...steps.flatMap((step) => [step, ...step.reads]),
    ...steps.flatMap((step) => besides(pairsOn(step.sheet), step)),
  ];
  for (const { sheet, row, column } of cells) {
    const pair = pairsOn(sheet).get(keyOf({ row, column }));
    const role = DETAILS.find((one) => one === pair?.role);
    if (pair !== undefined && role !== undefined && !details.has(role))
      details.set(role, { sheet, row, column, label: pair.label });
  }
  return details;
}

/** What stands beside the steps of a solution's calculation and is an answer by its formulas, whatever its heading says. */
function workedBeside(
  steps: readonly Step[],
  pairsOn: (sheet: WorkbookSheet) => ReadonlyMap<string, LabelledPair>,
): readonly ExampleAnswer[] {
  const places = steps.flatMap((step) => [step, ...besides(pairsOn(step.sheet), step)]);
  const answers = places.flatMap(({ sheet, row, column }) => {
    const pair = pairsOn(sheet).get(keyOf({ row, column }));
    const answer = pair === undefined ? null : answerOf(pair, { row, column });
    return answer?.role === undefined ? [] : [{ ...answer, sheet }];
  });
  return [...new Map(answers.map((answer) => [cellKey(answer), answer])).values()];
}

/**
 * Solutions given a row each, with what another table, be it on another sheet, says of them: the one whose formulas
 * read their masses.
 */
export function withWorkings(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  sheets: readonly SheetToRead[],
): readonly RecipeBlock[] {
  const solutions = bareSolutions(blocks);
  if (solutions.size === 0) return blocks;
  const steps = stepsOf(workbook, solutions);
  const known = new Map<WorkbookSheet, ReadonlyMap<string, LabelledPair>>();
  const pairsOn = (sheet: WorkbookSheet) => {
    const toRead = sheets.find(({ context }) => context.sheet === sheet);
    const pairs = known.get(sheet) ?? (toRead === undefined ? new Map() : pairsByCell(toRead));
    known.set(sheet, pairs);
    return pairs;
  };
  return blocks.map((block) => {
    const own = steps.get(block);
    const [solute, ...others] = block.names;
    if (own === undefined || solute === undefined) return block;
    const details = detailsOf(own, pairsOn);
    const worked = [...(block.worked ?? []), ...workedBeside(own, pairsOn)];
    return { ...block, worked, names: [{ ...solute, details }, ...others] };
  });
}
