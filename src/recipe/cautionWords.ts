import { cautions } from "../catalogue/cautions";
import type { Item } from "./item";

/** What is to be said to the eater of an item, in words; "none known" when there is nothing. */
export function cautionWords({ facts, cautionText }: Item): string {
  const sentences = facts.cautions.map((key) => cautions[key].text);
  if (cautionText !== null) sentences.unshift(cautionText);
  return sentences.length === 0 ? "none known" : sentences.join(" ");
}
