import { freezingPointC } from "../answers/answers";
import { numberEdit } from "../cellEdit";
import { freezingEffect, rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { misreadingOf } from "../amounts/misreadParts";
import { plainWaterGrams } from "../amounts/plainWaterGrams";
import type { Rule } from "../rule";
import { statedParts, type StatedPart } from "../answers/statedParts";

const identity = { id: "water-not-counted", severity: "error" } as const;

function finding(stated: StatedPart): Finding[] {
  const { sheet, label, value, right, mix, basis, factor } = stated;
  if (misreadingOf(stated) !== "plain water" || right < value * 1.02) return [];
  const unit = basis === "g" ? "g" : "%";
  const point = freezingPointC(mix);
  return [
    findingAt(identity, sheet, stated, {
      message: `"${label}" counts the ${rounded(plainWaterGrams(mix), 1)} g poured in; with the water in the other ingredients it is ${rounded(right, 1)} ${unit}.`,
      // To first order the depression goes with the water: the same solutes in less water.
      effect: point === null ? null : freezingEffect((point * right) / value, point),
      fix: `Use ${rounded(right, 1)} ${unit}.`,
      edits: numberEdit(sheet, stated, rounded(right, 1) / factor),
    }),
  ];
}

export const waterNotCounted: Rule = {
  ...identity,
  title: "The water inside the ingredients is not counted",
  find: (context) => statedParts(context).flatMap(finding),
};
