import { nameInList } from "./nameInList";
import type { ItemCheck } from "./knownItems";

const BRACKETED = /^(.*?)\s*[([]\s*([^()[\]]+)\s*[)\]]\s*$/;

/** The item that a text of a class sheet names: "sucrose", "NaCl", "sodium chloride (NaCl)"; null when it names none. */
export function chemicalName(text: string, check: ItemCheck): string | null {
  const bracketed = BRACKETED.exec(text);
  for (const part of [text, bracketed?.[1], bracketed?.[2]]) {
    if (part === undefined || part === "") continue;
    const { item } = nameInList(part, check);
    if (check(item).kind !== "unknown") return item;
  }
  return null;
}
