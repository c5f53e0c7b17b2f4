import { badInput, isProblem, type Problem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { soluteContent, soluteNamed } from "./catalogueItem";
import type { Content } from "./item";
import { dissolvedOf, MILK_SOLIDS, MOST_OFF_GRAMS } from "./ownDissolved";
import type { OwnRow } from "./ownRow";
import { substanceOf, type Substance } from "./substance";

export interface OwnContent {
  readonly content: Content;
  readonly assumptions: readonly string[];
}

/** Water of a row, g per 100 g, from whichever of water, solids or Brix it states. */
function waterOf({ numbers }: OwnRow, dissolved: number, undissolved: number): Result<number> {
  const { water, solids, brix } = numbers;
  const stated = [
    ...(water === undefined ? [] : [water]),
    ...(solids === undefined ? [] : [100 - solids]),
    ...(brix === undefined ? [] : [100 - dissolved - undissolved]),
  ];
  const [first] = stated;
  if (first === undefined) {
    return badInput(
      "one of water, solids or brix must be stated, or its water would pass as inert.",
    );
  }
  const off = Math.max(...stated) - Math.min(...stated);
  return off <= MOST_OFF_GRAMS
    ? first
    : badInput(
        `water, solids and brix disagree by ${off.toFixed(1)} g of water per 100 g; at most ${MOST_OFF_GRAMS} is allowed.`,
      );
}

/** What 1 g of the user's own ingredient holds; a row that does not add up to 100 ± 2 says by how much. */
export function ownContent(row: OwnRow): Result<OwnContent> {
  const { fat = 0, protein = 0, ash = 0, inert = 0, "milk solids": milk = 0 } = row.numbers;
  const allProtein = protein + milk * MILK_SOLIDS.protein;
  const undissolved = fat + allProtein + ash + inert;
  const found = dissolvedOf(row, undissolved);
  if (isProblem(found)) return found;
  const [grams, assumptions] = found;
  const parts = substancesOf(grams);
  const water = waterOf(row, parts.dissolved + parts.crystalWater, undissolved);
  if (isProblem(water)) return water;
  const total = water + parts.crystalWater + parts.dissolved + undissolved;
  if (Math.abs(total - 100) > MOST_OFF_GRAMS) return doesNotAddUp(total);
  const rest = Math.max(100 - total, 0);
  const share = (value: number) => value / (total + rest);
  const content: Content = {
    water: share(water + parts.crystalWater),
    substances: parts.substances.map(([substance, value]) => [substance, share(value)]),
    fat: share(fat),
    protein: share(allProtein),
    ash: share(ash),
    inert: share(inert + rest),
    pieceWater: 0,
  };
  return { content, assumptions };
}

function doesNotAddUp(total: number): Problem {
  const off = Math.abs(total - 100).toFixed(1);
  return badInput(
    `the parts add up to ${total.toFixed(1)} g, ${off} g too ${total > 100 ? "much" : "little"}; 100 ± ${MOST_OFF_GRAMS} g is expected (what does not dissolve goes to inert).`,
  );
}

function substancesOf(grams: ReadonlyMap<string, number>) {
  const substances: [Substance, number][] = [];
  let crystalWater = 0;
  for (const [name, value] of grams) {
    const { water, substances: own } = soluteContent(soluteNamed(name));
    crystalWater += water * value;
    for (const [substance, share] of own) {
      if (value > 0)
        substances.push([substanceOf(substance.solute ?? soluteNamed(name)), share * value]);
    }
  }
  const dissolved = substances.reduce((sum, [, value]) => sum + value, 0);
  return { substances, crystalWater, dissolved };
}
