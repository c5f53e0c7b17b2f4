import type { OwnIngredients } from "../../recipe/namedItem";
import { NO_OWN_INGREDIENTS } from "../../recipe/namedItem";
import { readOwnIngredients } from "../../recipe/readOwnIngredients";
import { single } from "../../recipe/lattice";
import type { Argument } from "./argument";
import { isBlankCell } from "./hostValue";

const OWN = {
  name: "ownIngredients",
  description: "Range with a header row of your own ingredients, such as Table[#All]",
  optional: true,
};

/** The user's own ingredients: by them names are read; they keep their place for ever. */
export function ownIngredients(): Argument<OwnIngredients> {
  return {
    parameters: () => [OWN],
    readsOwn: (given) =>
      given === null || isBlankCell(given) ? NO_OWN_INGREDIENTS : readOwnIngredients(given),
    read: (_key, _given, { own }) => single<OwnIngredients>(own),
  };
}
