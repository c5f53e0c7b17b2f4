import { findItem } from "../../catalogue/findItem";
import type { Solute } from "../../catalogue/solute";
import { solutes } from "../../catalogue/solutes";
import type { ItemKnowledge } from "../recipes/names/knownItems";
import { hydrateOfSolute } from "./pureSolute";

/** The two things a name can mean that does not say whether crystal water is in it. */
export interface HydrateReadings {
  readonly anhydrous: string;
  readonly hydrate: string;
  /** True when the tool itself declines to choose; else it takes the anhydrous one. */
  readonly declined: boolean;
}

const SAYS_WHICH = /anhydr|wasserfrei|hydrat|dried|trocken/i;

function readingsOf(solute: Solute | undefined, declined: boolean): HydrateReadings | null {
  const hydrate = solute === undefined ? undefined : hydrateOfSolute(solute);
  return solute === undefined || hydrate === undefined
    ? null
    : { anhydrous: solute.name, hydrate: hydrate.name, declined };
}

/** The readings of a name that does not say whether it is a hydrate; null when the name is plain. */
export function hydrateReadings(name: string, knowledge: ItemKnowledge): HydrateReadings | null {
  if (knowledge.kind === "ambiguous") {
    const [, second, ...more] = knowledge.choices;
    const solute = solutes.find((one) => one.name === second);
    return more.length > 0 ? null : readingsOf(solute, true);
  }
  const match = findItem(name);
  if (match.kind !== "solute" || SAYS_WHICH.test(name)) return null;
  // "glucose" is the anhydrous sugar by convention; it is "dextrose" that leaves it open.
  return match.solute.name === "glucose" ? null : readingsOf(match.solute, false);
}
