import { headerRole } from "../headings/headerRole";
import type { ExampleAnswer, Place } from "../recipeBlock";
import type { LabelledPair } from "./labelledPairs";

/** An answer of a worked example; where its label says too little ("T in °C"), with what the formulas make of it. */
export function answerOf({ label, role }: LabelledPair, { row, column }: Place): ExampleAnswer {
  const isPoint = role === "freezing point" || role === "depression" || role === "molality";
  return { row, column, label, ...(isPoint && headerRole(label) !== role && { role }) };
}
