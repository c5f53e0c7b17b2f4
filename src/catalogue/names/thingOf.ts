import type { KnownMatch } from "./itemMatch";

/** What two names have in common that stand for the same. */
export function thingOf(match: KnownMatch): unknown {
  if (match.kind === "solute") return match.solute;
  return match.kind === "ingredient" ? match.ingredient : match.choices;
}
