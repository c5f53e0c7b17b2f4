import { plainWords } from "./plainWords";

/** Heads a column that says of which recipe a line is. */
const OF_RECIPE =
  /^(recipes?|mix(es|tures?)?|flavou?rs?|products?|variants?|kinds?|sorts?|batch(es)?|trials?|rezept(ur)?(en?)?|(eis)?sorten?|mischung(en)?|produkte?|ansatz|ansätze|charge|versuch)( ?(name|no\.?|nr\.?|number|nummer|id))?$/;

/** Whether a heading says that its column names the recipe that a line is of: "Recipe", "Sorte". */
export const saysRecipe = (heading: string): boolean => OF_RECIPE.test(plainWords(heading));
