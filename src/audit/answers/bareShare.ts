import { plainWords } from "../recipes/headings/plainWords";
import { perOf, withoutPerWater, type Per } from "./perOf";

/** What a share is called, and of what it may be one; common practice, no source. */
const WORD =
  /^(mass(en)?(anteil|bruch|prozent|gehalt|konzentration)?e?s?|gewichts?(anteil|prozent)?|anteil|prozent(satz|gehalt|anteil)?|gehalt|konzentration|stärke|percent(age)?|per|cents?|share|fraction|concentration|strength|content|proportion|w|ω|m|by|weight|of|in|the|at|on|am|an|im|der|des|die|whole|total|all|ganzen?|solution|lösung|syrup|sirups?|brine|sole|mix(ture)?|mischung|g|gramm|grams?|k?g|\d+)$/;

const LONGEST = 60;

/** What a label is per that names no part of the mix: "Massenanteil (%)", "g to 100 g of water"; null for any other. */
export function bareShare(label: string): Per | null {
  const plain = label.length > LONGEST ? "" : plainWords(label);
  const per = plain === "" ? null : perOf(plain);
  if (per === null) return null;
  const words = withoutPerWater(plain).split(/[^\p{L}\p{N}]+/u);
  return words.every((word) => word === "" || WORD.test(word)) ? per : null;
}
