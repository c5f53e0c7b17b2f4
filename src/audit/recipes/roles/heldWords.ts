import { anyOf } from "./anyOf";
import type { Words } from "./words";

const VESSEL =
  "(jug|pot|bowl|tub|pan|bucket|vat|tank|kettle|machine|churn|mixer|beaker|container|krug|topf|schüssel|eimer|kessel|kanne|bottich|wanne|behälter|maschine|becher)";
const HOLDS = "(holds|contains|carries|(ent)?hält|fasst|trägt)";
const UNIT = "[ ,]*[([]?(in )?(g|kg|mg|lb|oz|grams|gramm|%)?[)\\]]?$";

/** What all of it is in: below a list it holds what was put in. */
export const heldWords: Words = anyOf(
  `^(the |our |der |die |das |unser(e|en)? )?${VESSEL} (now |then |jetzt |nun |dann )?${HOLDS}( now| then| in all| altogether| jetzt| nun| insgesamt| zusammen)?${UNIT}`,
);
