import { hasSpirit, oneOf } from "../guests/words";
import type { Kit } from "../kit";
import { stillMet } from "../kitchens/hand";
import { withLines, type MadeRecipe } from "../recipes";
import { line, type StockLine } from "../stock";

const isSugar = ({ en }: StockLine): boolean => en === "sugar" || en === "sucrose";

const IN_GERMAN: Readonly<Record<string, string>> = {
  fructose: "Fruktose",
  "dextrose monohydrate": "Dextrose-Monohydrat",
};

/** The same with less sugar, or with something instead of what is left out. */
export function changed(made: MadeRecipe, keep: number, instead?: string): MadeRecipe {
  const sugar = made.lines.find(isSugar)!.grams;
  const lines = made.lines.map((each) =>
    isSugar(each) ? { ...each, grams: Math.round(each.grams * keep) } : each,
  );
  if (instead === undefined) return stillMet(withLines(made, lines));
  const others = lines.filter(({ en }) => en !== instead);
  const before = lines.find(({ en }) => en === instead)?.grams ?? 0;
  const grams = before + Math.round(sugar * (1 - keep));
  return stillMet(withLines(made, [...others, line(instead, IN_GERMAN[instead]!, grams)]));
}

/** A plain recipe to try things with. */
export const plainOf = (kit: Kit): MadeRecipe => oneOf(kit, (made) => !hasSpirit(made));
