import { isProblem } from "../foundation/problem";
import { ownColumn } from "../recipe/ownHeaders";

/** What a header of the own-ingredients range is read as: one of its words or a solute's name; null when nothing. */
export function ownHeaderMeaning(header: string): string | null {
  const column = ownColumn(header, "");
  if (column === null || isProblem(column)) return null;
  return typeof column === "string" ? column : column.solute.name;
}
