import { componentGrams } from "./answers";
import type { AuditContext } from "./context";
import { labelledAnswers, type LabelledAnswer } from "./labelledAnswers";
import type { MeantMix } from "./mix";
import { textAt } from "./recipes/cells";
import { headerRole, type Role } from "./recipes/headerRole";
import { amountPlace, isOneRow } from "./recipes/recipeBlock";
import { plainWords } from "./recipes/plainWords";
import { gramsPer, isMass } from "./recipes/unit";

export type Part = "water" | "dissolved solids" | "solids" | "sugars" | "ethanol";
/** In grams of the whole mix, g per 100 g of mix, or g per 100 g of water. */
export type PartBasis = "g" | "% of the mix" | "g per 100 g of water";

/** A number that is labelled as how much of something is in a recipe, with what it should be. */
export interface StatedPart extends LabelledAnswer {
  readonly part: Part;
  readonly basis: PartBasis;
  /** In the basis; grams where the cell is in kg. */
  readonly value: number;
  /** By what the cell's number is to be multiplied to be in the basis: 1000 for kg, 100 for a fraction. */
  readonly factor: number;
  readonly mix: MeantMix;
  readonly right: number;
}

/** The more particular first. What is said of milk's own solids is another thing. */
const PARTS: readonly (readonly [Part, RegExp])[] = [
  [
    "dissolved solids",
    /dissolved (solids|matter)|solids (in solution|dissolved)|gelöste[nr]? (feststoffe|trockenmasse|stoffe)/,
  ],
  ["solids", /\bsolids\b|dry (matter|mass)|trocken(masse|substanz|stoffe)|feststoffe/],
  ["ethanol", /\b(pure )?(alcohol|ethanol)\b|alkohol/],
  ["sugars", /\bsugars?\b|zucker/],
  ["water", /\bwater\b|wasser/],
];
const OTHER_THING =
  /milk solids|non-?fat|msnf|milchtrocken|fettfrei|% ?vol|abv|by volume|frozen|\b(as|is) ice\b|eisanteil|gefroren|free of|per bar|je (riegel|stück|portion)|lost|verlust|activity|aktivität|price|cost|added|temperature/;
const PER_WATER = /(g|gramm)?.{0,20}(\/|per|pro|je|auf) ?100 ?g ?(of )?(the )?(water|wasser)/;
const SHARE = /%|per ?cent|prozent|\bshare\b|anteil|fraction|w\/w/;
/** "Water (g)" may be an ingredient; "Water in the mix" is not. */
const OF_ALL =
  /\b(total|all|in (the )?(mix|recipe|batch|whole)|of the (mix|recipe|batch)|whole|gesamt|insgesamt)\b|gesamt|in der (mischung|masse)|im (mix|ansatz)/;
const NOT_PARTS = new Set<Role | null>([
  "freezing point",
  "depression",
  "molality",
  "ice fraction",
  "price",
  "temperature",
  "molar mass",
  "moles",
  "particles",
  "measured",
  "target",
  "name",
]);

function partOf(label: string): Part | null {
  const plain = plainWords(label);
  const isAbout100Water = PER_WATER.test(plain);
  if ((OTHER_THING.test(plain) && !isAbout100Water) || NOT_PARTS.has(headerRole(label)))
    return null;
  const words = plain.replace(/(\/|per|pro|je|auf) ?100 ?g ?(of )?(the )?(water|wasser)/, "");
  const part = PARTS.find(([, pattern]) => pattern.test(words))?.[0] ?? null;
  const isOfAll = OF_ALL.test(plain) || SHARE.test(plain) || isAbout100Water;
  const isPlain = part !== "water" && part !== "sugars";
  return part === null || isPlain || isOfAll ? part : null;
}

/** Whether a label says how much of something is in a recipe. */
export const isPartLabel = (label: string): boolean => partOf(label) !== null;

/** The basis by label, by the cell beside and by the format, and the factor that brings the number to it. */
function basisOf({
  sheet,
  row,
  column,
  label,
  recipe,
}: LabelledAnswer): readonly [PartBasis, number] | null {
  const [plain, beside] = [plainWords(label), plainWords(textAt(sheet, row, column + 1))];
  const cell = sheet.cellAt(row, column);
  if (PER_WATER.test(plain)) return ["g per 100 g of water", 1];
  if (/%/.test((cell?.format ?? "").replace(/"[^"]*"|\\./g, ""))) return ["% of the mix", 100];
  if (SHARE.test(plain) || beside.startsWith("%")) {
    const isFraction =
      typeof cell?.value === "number" && Math.abs(cell.value) <= 1 && !/%/.test(plain);
    return ["% of the mix", isFraction ? 100 : 1];
  }
  const said = `${plain} ${beside} ${(cell?.format ?? "").toLowerCase()}`;
  if (/\bkg\b|kilogram/.test(said)) return ["g", 1000];
  if (/\bg\b|\bgrams?\b|gramm/.test(said)) return ["g", 1];
  // Without a unit it is in that of the amounts.
  const { unit } = recipe;
  return typeof unit === "string" && isMass(unit) ? ["g", gramsPer(unit)] : null;
}

/** How much of a part is in a mix, on a basis; null when it cannot be computed. */
export function partIn(mix: MeantMix, part: Part, basis: PartBasis): number | null {
  const grams = componentGrams(mix, part);
  if (grams === null || basis === "g") return grams;
  const total = mix.grams.reduce((sum, one) => sum + one, 0);
  const whole = basis === "% of the mix" ? total : componentGrams(mix, "water");
  return whole === null || whole <= 0 ? null : (100 * grams) / whole;
}

function statedPart(context: AuditContext, answer: LabelledAnswer): StatedPart[] {
  const { sheet, row, column, label, block, recipe } = answer;
  const [part, read] = [partOf(label), basisOf(answer)];
  const typed = sheet.cellAt(row, column)?.value;
  const isAmount = context.blocks.some(
    (one) =>
      one.sheet === sheet &&
      !isOneRow(one) &&
      one.names.some((name) =>
        one.recipes.some((each) => {
          const amount = amountPlace(one, each, name);
          return amount.row === row && amount.column === column;
        }),
      ),
  );
  if (part === null || read === null || typeof typed !== "number" || isAmount) return [];
  const [basis, factor] = read;
  const mix = context.mixOf(block, recipe);
  const right = mix.whole && mix.items.length > 0 ? partIn(mix, part, basis) : null;
  const value = typed * factor;
  return right === null || !Number.isFinite(value)
    ? []
    : [{ ...answer, part, basis, factor, value, mix, right }];
}

const known = new WeakMap<AuditContext["blocks"], readonly StatedPart[]>();

/** Beyond so many recipes a ledger's columns are not compared cell by cell. */
const MOST_RECIPES = 300;

/** The water, solids, sugars and alcohol that a workbook states for its recipes. */
export function statedParts(context: AuditContext): readonly StatedPart[] {
  const before = known.get(context.blocks);
  if (before !== undefined) return before;
  const blocks = context.blocks.filter(({ recipes }) => recipes.length <= MOST_RECIPES);
  const found = labelledAnswers(
    context.workbook,
    blocks,
    (label) => partOf(label) !== null,
  ).flatMap((answer) => statedPart(context, answer));
  known.set(context.blocks, found);
  return found;
}
