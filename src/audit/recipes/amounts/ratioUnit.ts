import { MIX_NOUNS } from "../roles/mixNouns";
import type { ShareUnit } from "./unit";

/** "Mass fraction (kg/kg)", "[g/g]", "g je g", "g per g of mix": a mass in the same mass, and of nothing else but the whole. */
const OF_THE_SAME = new RegExp(
  `(?<![\\p{L}\\d])(kg|g|mg)\\s?(?:/|per|pro|je|in|auf)\\s?(?:(?:1|one|each|every|einem|jedem) )?\\1(?: (?:(?:of|the|an|von|der|des|dem|whole|finished|total|ganzen|fertigen) )*${MIX_NOUNS})?\\s*[)\\]]?\\s*$`,
  "iu",
);

/** The unit of shares that are written as one mass in another; null where a text says none. */
export const ratioUnit = (text: string): ShareUnit | null =>
  OF_THE_SAME.test(text) ? "fraction" : null;
