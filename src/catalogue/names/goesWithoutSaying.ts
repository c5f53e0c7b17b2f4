import type { Ingredient } from "../ingredient";
import { isWordOf } from "./isWordOf";
import type { KnownMatch } from "./itemMatch";
import {
  biscuitWords,
  fruitWords,
  meltedWords,
  nutWords,
  pieceWords,
  preparationWords,
  pureWords,
  unsweetenedWords,
} from "./preparationWords";

const isOfAll = isWordOf(preparationWords);
const isPure = isWordOf(pureWords);
const isOfNothingElse = isWordOf([...pureWords, "natural", "natur", "naturrein", "100%"]);
const isOfNuts = isWordOf(nutWords);
const isOfBiscuits = isWordOf(biscuitWords);
const isOfFruit = isWordOf(fruitWords);
const isUnsweetened = isWordOf(unsweetenedWords);
const isOfState = isWordOf([...pieceWords, ...meltedWords]);

/** Salted ones are no unsalted ones, and praline is half sugar. */
const isPlainNut = ({ group, name }: Ingredient): boolean =>
  group === "nuts and seeds" && !/salted|praline/.test(name);
const isWholeFruit = ({ group, name }: Ingredient): boolean =>
  group === "fruit" && !name.endsWith("juice");
const isNeverSweetened = (ingredient: Ingredient): boolean =>
  isPlainNut(ingredient) ||
  ingredient.group === "fruit" ||
  ["coconut milk", "brewed coffee", "cocoa powder"].includes(ingredient.name);

/** Pure peanuts are not salted and sweetened ones, pure soy drink holds no sugar. */
const isAdulterated = ({ name }: Ingredient): boolean => /\bsalted|praline|\bsweetened/.test(name);

/** Whether a word may be left out of the name of some thing, because it changes nothing of what is in it. */
export function goesWithoutSaying(word: string, match: KnownMatch): boolean {
  if (match.kind === "ambiguous" && isOfState(word))
    return isOfAll(word) || match.choices.some((choice) => choice.endsWith("(pieces)"));
  if (match.kind !== "ingredient") return isOfAll(word);
  const { ingredient } = match;
  if (isOfNothingElse(word) && isAdulterated(ingredient)) return false;
  return (
    isOfAll(word) ||
    (isPure(word) && ingredient.group !== "water") ||
    (isOfNuts(word) && isPlainNut(ingredient)) ||
    (isOfBiscuits(word) && ingredient.group === "biscuits") ||
    (isOfFruit(word) && isWholeFruit(ingredient)) ||
    (isUnsweetened(word) && isNeverSweetened(ingredient))
  );
}
