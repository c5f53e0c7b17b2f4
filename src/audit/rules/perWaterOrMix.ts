import { numberEdit } from "../cellEdit";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { isMisread } from "../amounts/isMisread";
import { misreadingOf } from "../amounts/misreadParts";
import type { Rule } from "../rule";
import { statedParts, type StatedPart } from "../answers/statedParts";

const identity = { id: "per-water-or-per-mix", severity: "error" } as const;

function quantityOf({ part }: StatedPart, says: string): string {
  if (part === "dissolved solids") return `what is dissolved per ${says}`;
  return part === "sodium chloride" ? `salt per ${says}` : `sugar per ${says}`;
}

function finding(stated: StatedPart): Finding[] {
  const { sheet, label, value, right, basis, factor } = stated;
  if (misreadingOf(stated) !== "other basis") return [];
  // Where an amount itself is not what is meant, the number may be right for what is.
  if (isMisread(stated.block, stated.recipe)) return [];
  const isPerWater = basis === "g per 100 g of water";
  const [says, is] = isPerWater
    ? ["100 g of water", "100 g of mix"]
    : ["100 g of mix", "100 g of water"];
  return [
    findingAt(identity, sheet, stated, {
      message: `"${label}" is ${rounded(value, 2)}, which is per ${is}; per ${says} it is ${rounded(right, 2)}.`,
      effect: {
        quantity: quantityOf(stated, says),
        from: rounded(value, 2),
        to: rounded(right, 2),
        unit: isPerWater ? "g" : "%",
      },
      fix: `Enter ${rounded(right / factor, 4)}, or change the label.`,
      edits: numberEdit(sheet, stated, rounded(right / factor, factor === 100 ? 4 : 2)),
    }),
  ];
}

export const perWaterOrMix: Rule = {
  ...identity,
  title: "Per 100 g of water and per cent of the mix are mixed up",
  find: (context) => statedParts(context).flatMap(finding),
};
