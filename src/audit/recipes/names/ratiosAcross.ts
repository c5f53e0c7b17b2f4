import { textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import type { RecipeName } from "../recipeBlock";

/** "Salinity (g/kg)", "Dose, mg/l", "Salz in ‰": so much to so much. */
const RATIO =
  /(?<!\p{L})[mµ]?(g|mol) ?(\/|per|pro|je|in) ?(1000 ?|100 ?|1 ?)?(k?g|kilo|m?l|lit(re|er))(?!\p{L})|‰|\bpp[mt]\b|\bpsu\b/iu;

/**
 * Columns under unknown words in which so much is told of a kilogram or a litre, where the ingredients beside them are
 * weighed: they say how strong each mix is.
 */
export function ratiosAcross(
  { sheet, check }: FinderContext,
  row: number,
  names: readonly RecipeName[],
): readonly number[] {
  const isRatio = ({ column }: RecipeName) => RATIO.test(textAt(sheet, row, column));
  const isKnown = ({ item }: RecipeName) => check(item).kind !== "unknown";
  const known = names.filter(isKnown);
  if (known.length < 2 || known.some(isRatio)) return [];
  return names.filter((name) => !isKnown(name) && isRatio(name)).map(({ column }) => column);
}
