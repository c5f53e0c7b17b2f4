import { numberEdit } from "../cellEdit";
import { rounded } from "../effect";
import { findingAt } from "../findingAt";
import { isPointInFahrenheit } from "../temperatures/pointInFahrenheit";
import type { Rule } from "../rule";

const identity = { id: "freezing-point-sign", severity: "error" } as const;

/** Answers this near to 0 are left alone: their sign may be rounding. */
const CLEAR_K = 0.05;

export const depressionSign: Rule = {
  ...identity,
  title: "A depression is given as a freezing point, or a sign is wrong",
  find: (context) =>
    context.results.flatMap((result) => {
      const { role, value, unit, label, sheet, block, recipe } = result;
      if (unit === "°F" || Math.abs(value) < CLEAR_K) return [];
      const positivePoint = role === "freezing point" && value > 0;
      const negativeDepression = role === "depression" && value < 0;
      if (!positivePoint && !negativeDepression) return [];
      if (context.mixOf(block, recipe).items.length < 2) return []; // water alone freezes at 0 °C
      if (isPointInFahrenheit(context, result)) return [];
      const message = positivePoint
        ? `"${label}" is ${rounded(value, 3)}, above 0 °C: this is a depression, a freezing point has the opposite sign.`
        : `"${label}" is ${rounded(value, 3)}: a depression is a positive number, this is a freezing point.`;
      return findingAt(identity, sheet, result, {
        message,
        effect: {
          quantity: role,
          from: rounded(value, 2),
          to: rounded(-value, 2),
          unit: role === "freezing point" ? "°C" : "K",
        },
        fix: "Change the sign, or the label.",
        edits: numberEdit(sheet, result, -value),
      });
    }),
};
