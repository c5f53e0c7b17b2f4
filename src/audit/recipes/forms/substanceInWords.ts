import { pureSolute } from "../../solutions/pureSolute";
import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";
import { isWater } from "./isWater";

/** Longer texts are told to a class, and name more than what is dissolved. */
const LONGEST = 60;

/** The one pure substance that a title or heading names among its words: "Kochsalz in Wasser"; null for none or several. */
export function substanceInWords(text: string, { check }: FinderContext): string | null {
  if (text === "" || text.length > LONGEST) return null;
  const words = text.split(/[\s,;:?!()[\]/]+/).filter((word) => word !== "");
  const found = new Map<string, string>();
  for (let at = 0; at < words.length; at += 1) {
    const length = [2, 1].find((some) => {
      const name = words.slice(at, at + some).join(" ");
      const item = isWater(name) ? null : chemicalName(name, check);
      const solute = item === null ? null : pureSolute(item);
      if (item === null || solute === null) return false;
      found.set(solute.name, item);
      return true;
    });
    if (length === 2) at += 1;
  }
  const [item, ...more] = found.values();
  return item === undefined || more.length > 0 ? null : item;
}
