import { unitFromWord } from "../recipes/amounts/unit";

/** A unit that goes on to say of what: "% of the water", "g je 100 g Wasser", "°C". */
const UNIT_OF =
  /^(°\s?[cf]|k|mol( ?\/ ?kg)?|k?g ?\/ ?mol|(k|°c) ?[·*]? ?kg ?[·*]?(\/ ?mol| ?mol ?(\^?[-−]1|⁻¹))|(%|per ?cent|prozent|k?g|grams?|gramm)(,? (of|in|by|per|pro|je|auf|on|to|der|des|vom|von|am|im)\b.*|\s?\/.*)?)$/i;

/** Whether a text is nothing but a unit: "g", "°C", "% of the mix". */
export const isUnit = (text: string): boolean => unitFromWord(text) !== null || UNIT_OF.test(text);
