import { findItem } from "../../src/catalogue/findItem";

/** As the display language calls it; the functions know that name as well. */
export function localName(name: string, language: string): string {
  const match = findItem(name);
  const entry =
    match.kind === "solute" ? match.solute : match.kind === "ingredient" ? match.ingredient : null;
  return language === "de" ? (entry?.aliases.de[0] ?? name) : name;
}
