import { plainWaterGrams } from "../amounts/plainWaterGrams";
import type { MeantMix } from "../mix";
import { plainWords } from "../recipes/headings/plainWords";
import { componentGrams } from "./answers";

/** "Water in a cup (g)", "Wasser im Becher [g]": of a helping, or of all that was mixed where a cup takes it. */
const IN_VESSEL =
  /^(water|wasser)(menge)? (in|im|per|pro|je) ((the|a|an|one|each|every|our|einem|einer|eine|dem|der|jede[mrs]?) )?[\p{L}-]+(,? ?[([]?(in )?k?g[)\]]?)?$/u;

/** Typed numbers are rounded. */
const CLOSE = 0.01;

/** Whether a label speaks of the water in some vessel. */
export const saysWaterOfVessel = (label: string): boolean => IN_VESSEL.test(plainWords(label));

/** Whether so many grams are all the water of a mix, or all that was poured in: then the vessel takes the whole of it. */
export function isWaterOfMix(mix: MeantMix, grams: number): boolean {
  const waters = [componentGrams(mix, "water") ?? 0, plainWaterGrams(mix)];
  return waters.some((water) => water > 0 && Math.abs(grams / water - 1) < CLOSE);
}
