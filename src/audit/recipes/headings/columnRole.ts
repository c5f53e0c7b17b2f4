import { lowerWords } from "./lowerWords";
import { drinkWords } from "../roles/drinkWords";
import { listWords } from "../roles/listWords";
import { totalWords } from "../roles/totalWords";
import type { Words } from "../roles/words";
import { unitFromHeader } from "../amounts/unit";

/** What a column of numbers beside ingredients is about, as far as it matters whether they are amounts. */
export type ColumnRole = "amount" | "unit" | "price" | "composition" | "other";

/** The more particular before the more general, as `headerRole` has them. */
const ROLES: readonly (readonly [ColumnRole, Words])[] = [
  ["unit", listWords.unit],
  ["price", listWords.price],
  ["amount", listWords.perLot],
  ["composition", drinkWords.strength],
  ["other", totalWords],
  ["composition", listWords.perWater],
  ["amount", listWords.shareOnly],
  ["composition", listWords.composition],
  ["other", listWords.stock],
  ["amount", listWords.massInUnit],
  ["other", listWords.other],
  ["amount", listWords.amount],
];

/** What a heading over numbers beside ingredients says they are, or null when it says nothing known. */
export function columnRole(heading: string): ColumnRole | null {
  const plain = lowerWords(heading);
  if (plain === "" || plain.length > 80) return null;
  const said = ROLES.find(([, words]) => words.test(plain))?.[0];
  return said ?? (unitFromHeader(plain) === null ? null : "amount");
}
