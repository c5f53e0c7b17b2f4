import type { Book } from "../book";
import { barsSheet } from "./barsSheet";
import { costingSheet } from "./costingSheet";
import { namesSheet, OWN_INGREDIENTS } from "./namesSheet";
import { recipesSheet } from "./recipesSheet";

/** The recipe book the bench opens with: an invented community kitchen, its prices made up. */
export const demoBook: Book = {
  name: "Sallow Row recipe book",
  sheets: [recipesSheet, barsSheet, costingSheet, namesSheet],
  names: [{ name: "OurNames", refersTo: OWN_INGREDIENTS, sheet: null }],
};
