import { badInput, isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { abvMassFraction, ETHANOL_G_PER_ML } from "./abvMassFraction";
import { soluteNamed } from "./catalogueItem";
import type { OwnRow } from "./ownRow";

/** Parts of milk solids-not-fat, g per g. @source usdaSr26, whole milk: lactose, protein, soluble salts */
export const MILK_SOLIDS = { lactose: 0.556, protein: 0.366, "milk salts": 0.078 } as const;

/** How far a row may be from 100 g, and its statements from each other. */
export const MOST_OFF_GRAMS = 2;

function ethanolOf({ numbers, solutes }: OwnRow): Result<number> {
  const { abv } = numbers;
  const stated = solutes.find(([{ name }]) => name === "ethanol");
  if (abv === undefined || abv === 0) return 0; // a column of ethanol is a solute like others
  if (stated !== undefined)
    return badInput(`both abv (${abv}) and ethanol (${stated[1]}) are given; one is expected.`);
  if (numbers.brix !== undefined && numbers.brix > 0)
    return badInput(
      `both abv (${abv}) and brix are given, and alcohol falsifies a Brix reading; water or solids is expected.`,
    );
  const density = numbers["g per mL"];
  return density === undefined ? 100 * abvMassFraction(abv) : (abv * ETHANOL_G_PER_ML) / density;
}

/** Grams of each solute per 100 g that the row states, with what was taken for granted. */
export function dissolvedOf(
  row: OwnRow,
  undissolved: number,
): Result<[Map<string, number>, string[]]> {
  const { numbers, solutes } = row;
  const grams = new Map<string, number>(solutes.map(([{ name }, value]) => [name, value]));
  const assumptions: string[] = [];
  const add = (name: string, more: number) => grams.set(name, (grams.get(name) ?? 0) + more);
  const milk = numbers["milk solids"] ?? 0;
  if (milk > 0) {
    const twice = ["lactose", "lactose monohydrate"].find((name) => (grams.get(name) ?? 0) > 0);
    if (twice !== undefined)
      return badInput(
        `${twice} (${grams.get(twice) ?? 0}) and milk solids (${milk}) are both given, and milk solids hold lactose; one of them is expected.`,
      );
    add("lactose", milk * MILK_SOLIDS.lactose);
    add("milk salts", milk * MILK_SOLIDS["milk salts"]);
    assumptions.push(
      "milk solids are split as in milk: 55.6 % lactose, 36.6 % protein, 7.8 % salts",
    );
  }
  const ethanol = ethanolOf(row);
  if (isProblem(ethanol)) return ethanol;
  if (ethanol > 0) add("ethanol", ethanol);
  const unsplit = unsplitSugars(row, grams, undissolved);
  if (isProblem(unsplit)) return unsplit;
  if (unsplit > 0) {
    add("sucrose", unsplit);
    assumptions.push("sugars that are not split are taken as sucrose");
  }
  return [grams, assumptions];
}

/** Sugars stated only as a sum, or by Brix, beyond those named one by one. */
function unsplitSugars(
  { numbers }: OwnRow,
  grams: ReadonlyMap<string, number>,
  undissolved: number,
) {
  const named = [...grams].filter(([name]) => soluteNamed(name).kind === "sugar");
  const namedSugars = named.reduce((sum, [, value]) => sum + value, 0);
  const { sugars = 0, brix } = numbers;
  if (sugars > 0 && namedSugars > sugars + 0.5) {
    return badInput(
      `the sugars named one by one add up to ${namedSugars.toFixed(1)}, more than sugars (${sugars}), which is their sum.`,
    );
  }
  const beyond = sugars > 0 ? Math.max(sugars - namedSugars, 0) : 0;
  if (brix === undefined) return beyond;
  // a refractometer reads the liquid part: what does not dissolve is not in it
  const soluble = (brix / 100) * (100 - undissolved);
  const stated = [...grams.values()].reduce((sum, value) => sum + value, beyond);
  if (stated > soluble + MOST_OFF_GRAMS) {
    return badInput(
      `what is dissolved adds up to ${stated.toFixed(1)}, more than brix (${brix}) allows; at most ${soluble.toFixed(1)} is expected.`,
    );
  }
  return beyond + Math.max(soluble - stated, 0);
}
