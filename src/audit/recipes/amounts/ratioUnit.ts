import type { ShareUnit } from "./unit";

/** "Mass fraction (kg/kg)", "[g/g]", "g je g": a mass in the same mass, and of nothing else. */
const OF_THE_SAME = /(?<![\p{L}\d])(kg|g|mg)\s?(?:\/|per|pro|je)\s?\1\s*[)\]]?\s*$/iu;

/** The unit of shares that are written as one mass in another; null where a text says none. */
export const ratioUnit = (text: string): ShareUnit | null =>
  OF_THE_SAME.test(text) ? "fraction" : null;
