import { findItem } from "../../catalogue/findItem";
import { normalName } from "../../catalogue/normalName";
import { isProblem, outsideValidity } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { NAMED_COMPONENTS, type Component } from "../../recipe/components";
import { quoted, shortened } from "../../recipe/namedItem";
import type { Argument } from "./argument";
import { cellArgument } from "./cellArgument";
import { nearestText } from "./nearestName";
import { textOf } from "./text";

const EXPECTED = "a component such as water, sugars, fat or the name of a solute";
const byName = new Map(NAMED_COMPONENTS.map((name) => [normalName(name), name]));

/** What a word means as a component: a part of every mix, or a solute. */
export function componentNamed(word: string, place: string): Result<Component> {
  const named = byName.get(normalName(word));
  if (named !== undefined) return named;
  const match = findItem(word);
  if (match.kind === "solute") return { solute: match.solute };
  const shown = shortened(word);
  if (match.kind === "ambiguous") {
    const solutes = match.choices.filter((choice) => findItem(choice).kind === "solute");
    return outsideValidity(
      `${place}: "${shown}" can mean several things; write ${quoted(solutes.length > 0 ? solutes : match.choices)}.`,
    );
  }
  const [solute] =
    match.kind === "unknown"
      ? match.nearest.filter((name) => findItem(name).kind === "solute")
      : [];
  return outsideValidity(
    `${place}: "${shown}" is not a component; ${solute === undefined ? nearestText(word, NAMED_COMPONENTS) : `the nearest name is "${solute}"`}.`,
  );
}

/** A component of a mix: water, fat, sugars, …, or any solute of the catalogue. */
export function component(description: string): Argument<Component> {
  return cellArgument<Component>({
    description,
    optional: false,
    expected: EXPECTED,
    valueOf: (cell, place) => {
      const word = textOf(cell, place, EXPECTED);
      return isProblem(word) ? word : componentNamed(word, place);
    },
  });
}
