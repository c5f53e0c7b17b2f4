const OF_SOME =
  /\b(dry|wet|liquids?|solids?|without|but|except|of which|powders?|sugars?|fruit|ohne|au(ß|ss)er|davon|trocken\w*|flüssig\w*|pulver|zucker|frucht)\b/i;

/** Whether a label is that of a sum of some of the lines by intent: of what is dry, of the sugars, of all but the water. */
export const isOfSome = (label: string): boolean => OF_SOME.test(label);
