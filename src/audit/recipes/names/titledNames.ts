import { knownItem } from "../../../catalogue/names/knownItem";
import { hydrateReadings } from "../../solutions/hydrates";
import { looksNumeric, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import type { RecipeBlock } from "../recipeBlock";
import { sheetTexts } from "../sheetTexts";

/** A title stands at most so many rows above the headings. */
const REACH = 4;
/** A name has at most so many words. */
const MOST_WORDS = 4;

/** The thing that a text names, as the catalogue calls it; null for none or several. */
function thingNamed(text: string): string | null {
  const match = knownItem(text);
  if (match?.kind === "solute") return match.solute.name;
  return match?.kind === "ingredient" ? match.ingredient.name : null;
}

/** The words of the titles above a list, without those that label a number. */
function titlesAbove({ sheet, headerRow, range }: RecipeBlock): readonly string[] {
  const top = headerRow ?? range.top;
  const rows = Array.from({ length: REACH }, (_, at) => top - 1 - at);
  return rows.flatMap((row) =>
    (sheetTexts(sheet).columnsByRow.get(row) ?? [])
      .filter((column) => !looksNumeric(sheet, row, column + 1))
      .map((column) => textAt(sheet, row, column)),
  );
}

/** The only one of some things that titles name. */
function onlyNamed(titles: readonly string[], choices: readonly string[]): string | null {
  const things = new Map(choices.map((choice) => [thingNamed(choice), choice]));
  const found = new Set<string>();
  for (const title of titles) {
    const words = title.split(/[\s,;:?!()[\]/]+/).filter((word) => word !== "");
    for (let from = 0; from < words.length; from += 1) {
      for (let length = 1; length <= MOST_WORDS; length += 1) {
        const thing = thingNamed(words.slice(from, from + length).join(" "));
        const choice = thing === null ? undefined : things.get(thing);
        if (choice !== undefined) found.add(choice);
      }
    }
  }
  const [only, ...more] = found;
  return only === undefined || more.length > 0 ? null : only;
}

/**
 * A list in which a name that can mean several things means the one that its title names: "glycol" below "ethylene
 * glycol and water". Whether crystal water is in it has a rule of its own.
 */
export function withTitledNames({ check }: FinderContext, block: RecipeBlock): RecipeBlock {
  const titles = new Map<string, string | null>();
  for (const { item } of block.names) {
    const knowledge = check(item);
    if (knowledge.kind !== "ambiguous" || hydrateReadings(item, knowledge) !== null) continue;
    titles.set(item, onlyNamed(titlesAbove(block), knowledge.choices));
  }
  if (titles.size === 0) return block;
  const names = block.names.map((name) => ({ ...name, item: titles.get(name.item) ?? name.item }));
  return { ...block, names };
}
