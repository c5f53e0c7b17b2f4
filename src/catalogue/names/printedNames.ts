import { normalName } from "../normalName";
import { allNames, type NameLanguage } from "./allNames";
import type { KnownMatch } from "./itemMatch";

/** A name as it is printed, and what it stands for. */
export interface PrintedName {
  readonly printed: string;
  readonly match: KnownMatch;
  readonly language: NameLanguage;
}

/** All names by the form in which their spelling is compared. */
export const printedNames: ReadonlyMap<string, PrintedName> = (() => {
  const names = new Map<string, PrintedName>();
  for (const [printed, match, language] of allNames()) {
    const key = normalName(printed);
    if (!names.has(key)) names.set(key, { printed, match, language });
  }
  return names;
})();
