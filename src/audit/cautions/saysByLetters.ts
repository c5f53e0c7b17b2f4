const LIST = String.raw`[: ]+(?:(?:[A-R]|\d{1,2})[,;/ ]+)*(?:[A-R]|\d{1,2})\.?$`;

/** "Allergene: A, C, G", "Allergen no. 7", "Menu letters: C, G". Common practice, no source. */
const BY_LETTERS = new RegExp(
  String.raw`^(?:(?:allerge\p{L}*|alle?rg\.?|alg\.?)[ -]?(?:(?:code|letter|no|nr|nummer|number)s?\.?)?|menu letters?|kürzel|kennbuchstaben?)${LIST}`,
  "iu",
);

/** Whether a text names allergens by the letters or numbers that menus have for them. */
export const saysByLetters = (text: string): boolean => BY_LETTERS.test(text.trim());
