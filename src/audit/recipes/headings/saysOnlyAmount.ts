import { plainWords } from "./plainWords";
import { withoutUnitBehind } from "./withoutUnitBehind";

const AMOUNT =
  /^(the )?(amounts?|quantit(y|ies)|qty|weights?|mass|how much|mengen?|gewichte?|masse|einwaage|wie ?viel)$/;

/** Whether a heading says that there are amounts below it, and not of what: "Amount (g)", "Menge". */
export const saysOnlyAmount = (heading: string): boolean =>
  AMOUNT.test(plainWords(withoutUnitBehind(heading)));
