import { unitFromHeader, type AmountUnit } from "./unit";

/** "For a kilo", "makes half a kilo", "fürs ganze Kilo": how much the amounts make, not what they are in. */
const OF_SO_MUCH =
  /(?<!\p{L})((for|per|makes|in) )?(half )?(an?|the|one|half|whole|fürs|das|eine?|hal\p{L}+|ganze\p{L}?)( (half|whole|full|hal\p{L}+|ganze\p{L}?))? (kgs?|kilos?|kilogramm?s?)$/iu;

/** The unit that a heading of amounts carries, which is not that of how much they make; null when it names none. */
export const unitOfHeading = (heading: string): AmountUnit | null =>
  unitFromHeader(heading.replace(OF_SO_MUCH, ""));
