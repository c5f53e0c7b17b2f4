import type { Item } from "./item";

/** What is known of an item's allergens, in words; "unknown" when nothing can be said without the label. */
export function allergenWords({ facts, allergenText }: Item): string {
  if (allergenText !== null) return allergenText;
  if (facts.allergens === "unknown") return "unknown";
  const certain = facts.allergens.join(", ");
  const byMaker = (facts.allergensByMaker ?? []).join(", ");
  if (byMaker === "") return certain === "" ? "none by its nature" : certain;
  return certain === ""
    ? `depending on the maker: ${byMaker} (read the label)`
    : `${certain}; depending on the maker: ${byMaker} (read the label)`;
}
