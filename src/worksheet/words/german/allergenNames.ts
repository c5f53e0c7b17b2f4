import type { Allergen } from "../../../catalogue/ingredient";

/** The major allergens in German. */
export const allergenNames: Readonly<Record<Allergen, string>> = {
  milk: "Milch",
  egg: "Ei",
  fish: "Fisch",
  crustaceans: "Krebstiere",
  molluscs: "Weichtiere",
  "tree nuts": "Schalenfrüchte",
  peanuts: "Erdnüsse",
  "gluten cereals": "glutenhaltiges Getreide",
  soy: "Soja",
  sesame: "Sesam",
  celery: "Sellerie",
  mustard: "Senf",
  lupin: "Lupine",
  sulphites: "Sulfite",
};
