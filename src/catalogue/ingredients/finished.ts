import { defineIngredient, type Ingredient } from "../ingredient";

/** Finished products, for comparison only. */
export const finished: readonly Ingredient[] = [
  defineIngredient({
    name: "vanilla ice cream, finished",
    group: "finished",
    aliases: {
      en: [
        "finished vanilla ice cream",
        "bought vanilla ice cream",
        "shop-bought vanilla ice cream",
        "store-bought vanilla ice cream",
        "ready-made vanilla ice cream",
      ],
      de: ["Vanilleeis, fertig", "Vanilleeis, gekauft"],
    },
    composition: {
      water: 61,
      fat: 11,
      protein: 3.5,
      solutes: { sucrose: 15.3, lactose: 5.9, "milk salts": 0.803 },
      ash: 0.1,
      inert: 2.4,
    },
    spread: {
      water: 0.61,
      fat: 0.22,
      protein: 0.1,
      lactose: 0.24,
      sucrose: 0.31,
      "milk salts": 0.048,
    },
    spreadBasis:
      "natural spread of milk: lactose ± 4 %, salts ± 6 % relative; fat and water as dairies standardise them (common practice)",
    source: "usdaSr26",
    sourceRecord: "NDB 19095",
    obtained: "computed here",
    allergens: ["milk"],
    allergensByMaker: ["egg"],
    cautions: [],
    note: "A finished product, for comparison. Of its 21.2 g of sugars 5.9 are taken as lactose, the rest as sucrose. The source's parts add up to 100.7: fibre and starch counted in part twice, put right in what is inert.",
  }),
];
