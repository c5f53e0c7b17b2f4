import { dairySucrose } from "./dairySucrose";

/** Textbook mixes, g per 100 g; the rest of the mix is fat and stabiliser. Common practice, no source. */
export const iceCreamMixes = [
  { name: "plain, 10 % fat", milkSolidsNotFat: 11, sucrose: 15, water: 63.7 },
  { name: "plain, 12 % fat", milkSolidsNotFat: 11, sucrose: 15, water: 61.7 },
  { name: "rich, 16 % fat", milkSolidsNotFat: 9.5, sucrose: 15, water: 59.2 },
  { name: "milk ice, 4 % fat", milkSolidsNotFat: 12, sucrose: 13, water: 70.6 },
] as const;

/**
 * The dairy textbooks' way to a mix's freezing point, °C: lactose (54.5 % of the milk solids-not-fat) and
 * sugar per 100 g of water in the sucrose table, plus 2.37 K per g of milk solids-not-fat per g of water
 * for the salts.
 * @source leighton1927, as in goffHartel2013; from memory
 */
export function leightonFreezingPointC(mix: (typeof iceCreamMixes)[number]): number {
  const perWater = (100 * (0.545 * mix.milkSolidsNotFat + mix.sucrose)) / mix.water;
  const after = dairySucrose.findIndex(([grams]) => grams >= perWater);
  const [fromGrams, fromK] = dairySucrose[after - 1]!;
  const [toGrams, toK] = dairySucrose[after]!;
  const sugarsK = fromK + ((toK - fromK) * (perWater - fromGrams)) / (toGrams - fromGrams);
  return -(sugarsK + (2.37 * mix.milkSolidsNotFat) / mix.water);
}
