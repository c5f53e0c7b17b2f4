import type { Ingredient } from "./ingredient";
import { alcohol } from "./ingredients/alcohol";
import { biscuits } from "./ingredients/biscuits";
import { cocoaAndChocolate } from "./ingredients/cocoaAndChocolate";
import { confectionery } from "./ingredients/confectionery";
import { dairy } from "./ingredients/dairy";
import { eggs } from "./ingredients/eggs";
import { fats } from "./ingredients/fats";
import { finished } from "./ingredients/finished";
import { flavour } from "./ingredients/flavour";
import { fruit } from "./ingredients/fruit";
import { herbs } from "./ingredients/herbs";
import { honey } from "./ingredients/honey";
import { moreFruit } from "./ingredients/moreFruit";
import { nutsAndSeeds } from "./ingredients/nutsAndSeeds";
import { plantDrinks } from "./ingredients/plantDrinks";
import { polyolsAndFibres } from "./ingredients/polyolsAndFibres";
import { saltsAndAcids } from "./ingredients/saltsAndAcids";
import { seeds } from "./ingredients/seeds";
import { spices } from "./ingredients/spices";
import { stabilisers } from "./ingredients/stabilisers";
import { sugars } from "./ingredients/sugars";
import { syrups } from "./ingredients/syrups";
import { vegetables } from "./ingredients/vegetables";
import { water } from "./ingredients/water";

/** Every ingredient of the catalogue, by group. */
export const ingredients: readonly Ingredient[] = [
  ...water,
  ...sugars,
  ...syrups,
  ...honey,
  ...polyolsAndFibres,
  ...dairy,
  ...eggs,
  ...fruit,
  ...moreFruit,
  ...vegetables,
  ...herbs,
  ...plantDrinks,
  ...nutsAndSeeds,
  ...seeds,
  ...cocoaAndChocolate,
  ...biscuits,
  ...confectionery,
  ...alcohol,
  ...flavour,
  ...spices,
  ...saltsAndAcids,
  ...stabilisers,
  ...fats,
  ...finished,
];
