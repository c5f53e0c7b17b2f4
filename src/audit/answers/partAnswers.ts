import { NAMESPACE } from "../../worksheet/namespace";
import { headingOfSection } from "../amounts/headingOfSection";
import { textAt } from "../recipes/cells";
import { formKind } from "../recipes/forms/formLabels";
import { headerRole } from "../recipes/headings/headerRole";
import { isOneRow } from "../recipes/recipeBlock";
import { bareShare } from "./bareShare";
import { isOfOneSolute } from "./isOfOneSolute";
import { keptAnswers } from "./keptAnswers";
import type { LabelledAnswer } from "./labelledAnswer";
import { labelledAnswers } from "./labelledAnswers";
import { partOf } from "./partLabel";
import { partOfEach, partPerTotal } from "./partPerTotal";
import { amountsOf, isPlainAnswer, plainPartOf } from "./plainPart";
import { saysWaterOfVessel } from "./waterOfVessel";

const MONEY = /[€$£]/;

/** One of our functions that tells something else of a mix than how much of a part is in it. */
const ASKS_OTHER_THING = new RegExp(
  `\\b${NAMESPACE}\\.(?!(COMPONENT|COMPOSITION|CONCENTRATION|MASSFRACTION|GRAMS|BRIX|UNFROZENSOLIDS|MAXFREEZECONCENTRATED)\\()\\w+\\(`,
  "i",
);

/** Whether a label stands below words that head lines of money: "Costs (€)". */
function isOfMoney({ sheet, row, column }: LabelledAnswer): boolean {
  const [label] = [1, 2].map((step) => column - step).filter((at) => textAt(sheet, row, at) !== "");
  if (label === undefined) return false;
  const { words } = headingOfSection(sheet, { row, column: label });
  return headerRole(words) === "price" || MONEY.test(words);
}

/** The cells that say how much of something is in a recipe: water, solids, sugars, alcohol. */
export const partAnswers = keptAnswers((workbook, blocks) => {
  // Beside a solution that has a row to itself a heading may be of an answer and of its water.
  const amounts = amountsOf(blocks.filter((block) => !isOneRow(block)));
  const isWanted = (label: string) =>
    [partOf, plainPartOf, partOfEach, bareShare].some((read) => read(label) !== null) ||
    saysWaterOfVessel(label);
  return labelledAnswers(workbook, blocks, isWanted).filter((answer) => {
    const { sheet, row, column, label } = answer;
    if (amounts.get(sheet)?.has(`${row},${column}`) === true) return false;
    if (isOfMoney(answer)) return false;
    if (ASKS_OTHER_THING.test(sheet.cellAt(row, column)?.formula ?? "")) return false;
    if (partOf(label) !== null || saysWaterOfVessel(label)) return true;
    if (partOfEach(label) !== null) return partPerTotal(answer) !== null;
    // "Auf Wasser (g)" is what the solute is dissolved in, not what there is of it per so much water.
    return plainPartOf(label) === null
      ? isOfOneSolute(answer.block) && formKind(label) !== "water"
      : isPlainAnswer(workbook, blocks, answer);
  });
});
