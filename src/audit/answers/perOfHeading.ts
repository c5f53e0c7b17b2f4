import { textAt } from "../recipes/cells";
import { plainWords } from "../recipes/headings/plainWords";
import { isAnswer, type LabelledAnswer } from "./labelledAnswer";
import { perOf, type Per } from "./perOf";

/** A heading stands at most this far above its last answer, and labels so far left of theirs. */
const [ROWS, COLUMNS] = [12, 4];

/** The column in which the label of an answer stands left of it; null where it does not. */
function columnOfLabel({ sheet, row, column }: LabelledAnswer): number | null {
  for (let at = column - 1; at >= Math.max(0, column - COLUMNS); at -= 1) {
    if (textAt(sheet, row, at) !== "") return at;
  }
  return null;
}

/** What the heading of a column of answers says they are per: "Expected of 100 g", "Je 100 g Masse:"; null without one. */
export function perOfHeading(answer: LabelledAnswer): Per | null {
  const { sheet, row, column, block } = answer;
  const labels = columnOfLabel(answer);
  if (labels === null) return null;
  for (let at = row - 1; at >= Math.max(0, row - ROWS); at -= 1) {
    const isOfList = block.sheet === sheet && at >= block.range.top && at <= block.range.bottom;
    if (isOfList && labels <= block.range.right) return null;
    const words = textAt(sheet, at, labels);
    if (words === "" && !isAnswer(sheet, at, column)) return null;
    if (words === "" || isAnswer(sheet, at, column) || textAt(sheet, at, column) !== "") continue;
    const per = perOf(plainWords(words));
    return per === "share" ? null : per;
  }
  return null;
}
