import { referencesOf } from "../../workbook/references";
import { componentPer100, numberFrom } from "../answers/answers";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { alcoholLabel, namesDrink, strengthInName } from "./alcoholLabel";
import type { AlcoholTable } from "./alcoholTable";
import type { Drink } from "./drinkAt";
import { numberIn, placeIn, type LabelledLine } from "./labelledLine";

/** A strength in % vol, and the cell that holds it; none for one that stands in a name. */
export interface Strength {
  readonly percent: number;
  readonly at: Place | null;
}

/** A figure of the catalogue, or an own one, is of this drink when it is so near to what its strength gives. */
const SAME_DRINK = 0.25;
const byMass = (abvPercent: number): number =>
  100 * (numberFrom("ABVTOMASSFRACTION", abvPercent) ?? NaN);

/** A strength in % vol: 40, 0.4 shown as 40 %, "40 % vol". */
export function strengthAt({ sheet }: LabelledLine, place: Place): Strength | null {
  const value = numberIn(sheet, place) ?? strengthInName(textAt(sheet, place.row, place.column));
  if (value === null || value <= 0 || value > 100) return null;
  return { percent: value <= 1 ? 100 * value : value, at: place };
}

/** What share of a drink's mass its alcohol is, in %. */
export function massPercentOf({ name, own }: Drink, abvPercent: number): number {
  const plain = byMass(abvPercent);
  const listed = name === "" ? null : componentPer100(name, "ethanol", own);
  return listed !== null && Math.abs(listed / plain - 1) < SAME_DRINK ? listed : plain;
}

/** Whether a number without "by volume" beside it is one: by the drink's name, or by what is known of it. */
function isByVolume({ name, own }: Drink, abvPercent: number): boolean {
  if (strengthInName(name) === abvPercent || namesDrink(name)) return true;
  const listed = name === "" ? null : componentPer100(name, "ethanol", own);
  return listed !== null && listed > 1 && Math.abs(listed / byMass(abvPercent) - 1) < 0.03;
}

/** Strengths that may belong to a number: of the table, of a cell that its formula reads, of the drink's name. */
export function strengthsFor(
  { line, strengths }: AlcoholTable,
  index: number,
  drink: Drink,
): Strength[] {
  const found: Strength[] = [];
  for (const one of strengths) {
    const strength = strengthAt(one, placeIn(one, index));
    const isSure =
      strength !== null && (one.says === "strength" || isByVolume(drink, strength.percent));
    if (isSure) found.push(strength);
  }
  const { row, column } = placeIn(line, index);
  const formula = line.sheet.cellAt(row, column)?.formula ?? "";
  for (const { sheet, range } of referencesOf(formula)) {
    const place = { row: range.top, column: range.left };
    const label = [1, 2, 3].map((step) => textAt(line.sheet, place.row, place.column - step));
    if (sheet !== null || !label.some((text) => alcoholLabel(text) === "strength")) continue;
    found.push(strengthAt(line, place) ?? { percent: NaN, at: place });
  }
  const named = strengthInName(drink.name);
  if (named !== null && named > 0 && named <= 100) found.push({ percent: named, at: null });
  return found.filter(({ percent }) => percent > 1);
}
