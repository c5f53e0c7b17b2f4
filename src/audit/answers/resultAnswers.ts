import { keptAnswers } from "./keptAnswers";
import { labelledAnswers } from "./labelledAnswers";
import { resultRole } from "./resultRole";

const isResult = (label: string): boolean => resultRole(label) !== null;

/** The cells that are labelled as a recipe's freezing point, depression, molality or share of ice. */
export const resultAnswers = keptAnswers((workbook, blocks) =>
  labelledAnswers(workbook, blocks, isResult),
);
