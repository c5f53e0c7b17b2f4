/** What the kitchen buys: its plain name, what it is in the catalogue, and a made-up price of a pack. */
export interface PantryItem {
  readonly name: string;
  readonly sameAs: string | null; // null: described in the list of names itself
  readonly packGrams: number;
  readonly packPrice: number;
}

const item = (
  name: string,
  sameAs: string | null,
  packGrams: number,
  packPrice: number,
): PantryItem => ({ name, sameAs, packGrams, packPrice });

/** In the order of the recipe sheet's columns. */
export const pantry: readonly PantryItem[] = [
  item("Water", "water", 1000, 0.01),
  item("Milk", "whole milk", 1030, 1.25),
  item("Cream", "cream 35 % fat", 1000, 4.9),
  item("Milk powder", "skim milk powder", 500, 5.2),
  item("Sugar", "refined sugar", 1000, 1.3),
  item("Dextrose", "dextrose powder (monohydrate)", 1000, 4.4),
  item("Glucose syrup", "glucose syrup DE 42", 1000, 5.6),
  item("Honey", "honey, average", 500, 6.4),
  item("Apricot", "apricot", 1000, 4.2),
  item("Lemon juice", "lemon juice", 500, 3.1),
  item("Coffee", null, 1000, 1.1),
  item("Rum", "spirit 40 % vol", 660, 13.5),
  item("Salt", "fine salt", 500, 0.6),
  item("Pistachios", "pistachios", 250, 8.9),
  item("Biscuit", "digestive biscuit", 400, 2.3),
];

/** A recipe of the kitchen: grams by plain name, and how it is meant to be served. */
export interface KitchenRecipe {
  readonly name: string;
  readonly target: string;
  readonly grams: Readonly<Record<string, number>>;
}

export const recipes: readonly KitchenRecipe[] = [
  {
    name: "Apricot-pistachio sorbet bars",
    target: "tender bar at −18",
    grams: {
      Apricot: 600,
      Sugar: 150,
      Dextrose: 40,
      "Glucose syrup": 60,
      "Lemon juice": 30,
      Pistachios: 60,
    },
  },
  {
    name: "Lemon granita",
    target: "scraped granita",
    grams: { Water: 700, Sugar: 170, "Lemon juice": 160 },
  },
  {
    name: "Spiced coffee ice",
    target: "scraped granita",
    grams: { Coffee: 800, Sugar: 130 },
  },
  {
    name: "Honey ice",
    target: "scooped at −13",
    grams: { Milk: 560, Cream: 220, "Milk powder": 35, Honey: 150 },
  },
  {
    name: "Milk ice bars",
    target: "firm bar at −18",
    grams: { Milk: 680, Cream: 120, "Milk powder": 30, Sugar: 110 },
  },
  {
    name: "Cream ice with biscuit",
    target: "scooped at −13",
    grams: {
      Milk: 500,
      Cream: 280,
      "Milk powder": 40,
      Sugar: 130,
      "Glucose syrup": 40,
      Biscuit: 60,
    },
  },
  {
    name: "Apricot granita",
    target: "scraped granita",
    grams: { Apricot: 400, Water: 450, Sugar: 120, "Lemon juice": 25 },
  },
  {
    name: "Lemon sorbet",
    target: "scooped at −13",
    grams: { Water: 500, "Lemon juice": 200, Sugar: 240, "Glucose syrup": 60 },
  },
  {
    name: "Coffee cream bars",
    target: "firm bar at −18",
    grams: { Coffee: 300, Cream: 300, Milk: 200, "Milk powder": 30, Sugar: 120 },
  },
  {
    name: "Coffee and rum pops",
    target: "firm bar at −18",
    grams: { Coffee: 620, Rum: 40, Sugar: 120 },
  },
  {
    name: "Salted honey bars with pistachio",
    target: "firm bar at −18",
    grams: {
      Milk: 520,
      Cream: 240,
      "Milk powder": 35,
      Honey: 100,
      Sugar: 60,
      Salt: 3,
      Pistachios: 70,
    },
  },
  {
    name: "Apricot milk ice",
    target: "scooped at −13",
    grams: { Apricot: 350, Milk: 340, Cream: 120, "Milk powder": 25, Sugar: 140, Dextrose: 30 },
  },
  {
    name: "Last summer's lemon ice",
    target: "scooped at −13",
    grams: { Water: 650, Sugar: 110, "Lemon juice": 120 },
  },
];
