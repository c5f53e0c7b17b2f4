import { callFunction } from "../../../src/worksheet/callFunction";

/**
 * Milk's own sodium, counted as a label counts salt (sodium × 2.5), per gram of lactose: 500 mg/L of sodium beside
 * 49 g/L of lactose. @source foxMcSweeney1998, table 5.6; eu1169_2011, annex I (salt)
 */
const SALT_PER_LACTOSE = 0.025;

const ofMilk = (component: string): number => {
  const grams = callFunction("INGREDIENT", "whole milk", component)[0]?.[0];
  return typeof grams === "number" ? grams : 0;
};

/** The salts that come with so much lactose as in whole milk, and what is left of the label's salt beside them. */
export function milkSalts(lactoseGrams: number, saltGrams: number) {
  return {
    milkSaltsGrams: (lactoseGrams * ofMilk("milk salts")) / ofMilk("lactose"),
    addedSaltGrams: Math.max(saltGrams - lactoseGrams * SALT_PER_LACTOSE, 0),
  };
}
