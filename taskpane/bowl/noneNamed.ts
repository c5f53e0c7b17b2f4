/** In the allergens column of an own ingredient: its label was read, and names none of the fourteen. */
export const NONE_NAMED = "none named on the label";
