import { normalName } from "../normalName";
import type { KnownMatch } from "./itemMatch";
import { printedNames } from "./printedNames";

/** What a name spelled as in the catalogue stands for, regardless of case, spacing and Unicode form. */
export const spelledItem = (name: string): KnownMatch | undefined =>
  printedNames.get(normalName(name))?.match;
