import { cafeUndMarkt } from "./counterBooks/cafeUndMarkt";
import { caterersAndMakers } from "./counterBooks/caterersAndMakers";
import { eveningClass } from "./counterBooks/eveningClass";
import { hausgemacht } from "./counterBooks/hausgemacht";
import { homeCooks } from "./counterBooks/homeCooks";
import { kleineErzeuger } from "./counterBooks/kleineErzeuger";
import { oddArrangements } from "./counterBooks/oddArrangements";
import { vanAndStall } from "./counterBooks/vanAndStall";
import type { StrangersBook } from "./strangersBook";

/** Small workbooks of people who make, cost, price, scale, label and plan their frozen sweets. */
export const counterBooks: readonly StrangersBook[] = [
  ...cafeUndMarkt,
  ...caterersAndMakers,
  ...eveningClass,
  ...hausgemacht,
  ...homeCooks,
  ...kleineErzeuger,
  ...oddArrangements,
  ...vanAndStall,
];
