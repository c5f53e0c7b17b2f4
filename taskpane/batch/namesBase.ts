import { normalName } from "../../src/catalogue/normalName";
import type { RecognisedRecipe } from "../bowl/recognised";

/** True when one of a recipe's rows is called as the base is. */
export const namesBase = ({ lines }: RecognisedRecipe, title: string): boolean =>
  lines.some(({ name }) => typeof name === "string" && normalName(name) === normalName(title));
