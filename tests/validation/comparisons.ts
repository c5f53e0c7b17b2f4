import { activities } from "./compared/activities";
import { boiling } from "./compared/boiling";
import type { Comparison } from "./compared/comparison";
import { foods } from "./compared/foods";
import { mixed } from "./compared/mixed";
import { shares } from "./compared/shares";
import { setAsideTables, singleSolutes } from "./compared/singleSolutes";
import { standards } from "./compared/standards";
import { sugarsLeftOut } from "./compared/sugarsLeftOut";

/** Every table of printed figures beside what is computed for it; those kept back from the fits first. */
export function comparisons(): readonly Comparison[] {
  const all = [
    sugarsLeftOut(),
    ...standards(),
    ...mixed(),
    ...foods(),
    ...shares(),
    boiling(),
    ...singleSolutes(),
    ...activities(),
  ];
  return [
    ...all.filter(({ use }) => use === "held out"),
    ...all.filter(({ use }) => use === "fit"),
    ...all.filter(({ use }) => use === "set aside"),
    ...setAsideTables(),
  ];
}
