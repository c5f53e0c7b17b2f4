import { plainWords } from "./plainWords";

/** Heads a column that says what kind of ingredient a line is, or where in the kitchen it is used, not of which recipe. */
const OF_KIND =
  /^(categor(y|ies)|groups?|types?|phases?|parts?|steps?|sections?|stages?|kategorien?|(waren)?gruppen?|art|teil|schritt|phase|bereich|supplier|lieferant|allergens?|allergene?|units?|einheit)( ?([a-z]|\d+|[ivx]+)\.?)?$/;

/** Whether words say, as a heading or in a line, a kind of ingredient or a part of a recipe: "Phase", "Step 2". */
export const saysKind = (text: string): boolean => OF_KIND.test(plainWords(text));
