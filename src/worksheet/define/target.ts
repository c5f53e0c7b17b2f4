import { findTarget } from "../../catalogue/findTarget";
import type { ServingTarget } from "../../catalogue/target";
import { servingTargets } from "../../catalogue/targets";
import { isProblem, outsideValidity } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import type { Target } from "../../recipe/checkTarget";
import { shortened } from "../../recipe/namedItem";
import { isTargetTable, readTargets } from "../../recipe/readTargets";
import type { Argument } from "./argument";
import { cellArgument, type Value } from "./cellArgument";
import { nearestText } from "./nearestName";
import { textOf } from "./text";

const EXPECTED = "the name of a serving target";

function targetNamed(cell: Value, place: string): Result<ServingTarget> {
  const name = textOf(cell, place, EXPECTED);
  if (isProblem(name)) return name;
  const names = servingTargets.map((target) => target.name);
  return (
    findTarget(name) ??
    outsideValidity(
      `${place}: "${shortened(name)}" is not a serving target; ${nearestText(name, names)}.`,
    )
  );
}

/** The name of a serving target of the catalogue. */
export const targetName = (description: string): Argument<ServingTarget> =>
  cellArgument<ServingTarget>({
    description,
    optional: false,
    expected: EXPECTED,
    valueOf: targetNamed,
  });

/** A serving target: a name of the catalogue, or a range of one's own led by headers. */
export function target(description: string): Argument<Target> {
  const named = cellArgument<Target>({
    description,
    optional: false,
    expected: `${EXPECTED} or a range with the headers name, temperature, ice from, ice to, basis`,
    valueOf: targetNamed,
  });
  return {
    parameters: named.parameters,
    read: (key, given, context) => {
      const [range] = given;
      return range && isTargetTable(range)
        ? readTargets(key, range)
        : named.read(key, given, context);
    },
  };
}
