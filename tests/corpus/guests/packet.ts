import { callFunction } from "../../../src/worksheet/callFunction";
import type { StockLine } from "../stock";

/** Sugars in 100 g of what stays in pieces, by its packet. */
const PIECES: Readonly<Record<string, number>> = {
  hazelnuts: 4.3,
  pistachios: 7.7,
  walnuts: 2.6,
  pecans: 4,
  "desiccated coconut": 7.4,
  "digestive biscuits": 16.5,
  "dark chocolate (pieces)": 46,
};

export const isPiece = ({ en }: StockLine): boolean => en in PIECES;

/** Grams of sugars in 100 g, as a packet says it. */
export function sugarsIn(name: string): number {
  const grams = callFunction("COMPONENT", [[name]], [[100]], "sugars")[0]![0];
  return PIECES[name] ?? (typeof grams === "number" ? Number(grams.toFixed(1)) : 0);
}
