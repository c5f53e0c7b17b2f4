import { iceLineThetaMolPerKg } from "../engine/iceLine";
import { waterHeldKgPerMol } from "../engine/waterHeld";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { componentGrams, type Component } from "./components";
import type { Item } from "./item";
import type { Mix } from "./mix";
import { mixOfItem } from "./mixOf";

/** Grams of water that what one gram of an item dissolves holds back from freezing at a temperature below 0 °C. */
export function heldGramsPerGram({ content }: Item, temperatureC: number): number {
  const theta = iceLineThetaMolPerKg(temperatureC);
  return content.substances.reduce((sum, [substance, share]) => {
    const held = waterHeldKgPerMol(substance.curve, theta, "freezing");
    return sum + (1000 * share * held) / substance.molarMassGPerMol;
  }, 0);
}

const mixes = new WeakMap<Item, Result<Mix>>();

/** One gram of an item as a mix; made once, since a programme asks for it thousands of times. */
function oneGramOf(item: Item): Result<Mix> {
  const known = mixes.get(item) ?? mixOfItem(item, 1);
  mixes.set(item, known);
  return known;
}

/** Grams of a component that one gram of an item brings; evaporated water takes off water and mass. */
export function componentPerGram(item: Item, component: Component): number {
  if (item.origin.kind === "water lost") {
    return component === "water" || component === "total" ? -1 : 0;
  }
  const mix = oneGramOf(item);
  return isProblem(mix) ? 0 : componentGrams(mix, component);
}

/** Grams of sucrose that taste as sweet as one gram of an item; what has no known sweetness counts as 0. */
export const sweetnessPerGram = ({ content }: Item): number =>
  content.substances.reduce((sum, [{ sweetness }, share]) => sum + share * (sweetness ?? 0), 0);

/** What one gram of an item dissolves that has a Tm′, in grams, and that times its Tm′ in °C. */
export function endOfFreezingPerGram({ content }: Item): { grams: number; gramsTimesC: number } {
  let [grams, gramsTimesC] = [0, 0];
  for (const [{ maxFreezeTemperatureC, maxFreezeSolidsFraction }, share] of content.substances) {
    if (maxFreezeTemperatureC === null || maxFreezeSolidsFraction === null) continue;
    grams += share;
    gramsTimesC += share * maxFreezeTemperatureC;
  }
  return { grams, gramsTimesC };
}
