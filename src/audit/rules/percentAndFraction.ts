import { cellName } from "../../workbook/address";
import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { changedMix } from "../mix";
import type { RecipeBlock } from "../recipes/recipeBlock";
import type { Rule } from "../rule";
import { misreadShares, otherReading } from "../amounts/misreadShares";
import { shareLines, type Share, type ShareLine } from "../amounts/shareLines";
import { sumOf } from "../amounts/totalledLines";

const identity = { id: "percent-and-fraction", severity: "error" } as const;

/** The recipe with the share as it stands, and as it is meant. */
function effectOf(
  context: AuditContext,
  block: RecipeBlock,
  line: ShareLine,
  share: Share,
): Effect | null {
  const { recipe, whole } = line;
  if (recipe === null) return null;
  const typed = context.mixOf(block, recipe);
  const percent = (share.value / whole) * 100;
  const [as, meant] = [percent, otherReading(whole, percent)];
  return mixEffect(
    changedMix(typed, share.name, { grams: as }),
    changedMix(typed, share.name, { grams: meant }),
  );
}

function finding(
  context: AuditContext,
  block: RecipeBlock,
  line: ShareLine,
  share: Share,
): Finding {
  const { place, value } = share;
  const meant = rounded(otherReading(line.whole, value), 6);
  const among = line.whole === 100 ? "percentages" : "fractions";
  return findingAt(identity, line.sheet, place, {
    message: `${cellName(place.row, place.column)} is ${rounded(value, 6)} in a column of ${among}: as ${meant} the shares come to ${line.whole === 100 ? "100 %" : "1"}.`,
    effect: effectOf(context, block, line, share) ?? {
      quantity: "sum of the shares",
      from: rounded((sumOf(line.shares) / line.whole) * 100, 2),
      to: 100,
      unit: "%",
    },
    fix: `Enter ${meant}.`,
    edits: numberEdit(line.sheet, place, meant),
  });
}

export const percentAndFraction: Rule = {
  ...identity,
  title: "Percentages and fractions stand in one column",
  find: (context) =>
    context.blocks.flatMap((block) =>
      shareLines(block).flatMap((line) =>
        misreadShares(line).map((share) => finding(context, block, line, share)),
      ),
    ),
};
