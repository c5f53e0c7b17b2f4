import { bareShare } from "./bareShare";
import { componentGrams } from "./answers";
import type { AuditContext } from "../context";
import type { LabelledAnswer } from "./labelledAnswer";
import type { MeantMix } from "../mix";
import { partAnswers } from "./partAnswers";
import { partPerTotal } from "./partPerTotal";
import { perOfHeading } from "./perOfHeading";
import { plainPartOf } from "./plainPart";
import { isClassBlock } from "../recipes/classSheet";
import { partOf, type Part } from "./partLabel";
import type { Per } from "./perOf";
import { totalsOfWater } from "./totalsOfWater";
import { isWaterOfMix, saysWaterOfVessel } from "./waterOfVessel";
import { textAt } from "../recipes/cells";
import { plainWords } from "../recipes/headings/plainWords";
import {
  gramsPer,
  isMass,
  unitFromFormat,
  unitFromHeader,
  unitFromWord,
} from "../recipes/amounts/unit";

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

/** The basis by label, by the cell beside and by the format, and the factor that brings the number to it. */
function basisOf(
  { sheet, row, column, label, recipe }: LabelledAnswer,
  per: Per | null,
): readonly [PartBasis, number] | null {
  const unitCell = textAt(sheet, row, column + 1);
  const [plain, beside] = [plainWords(label), plainWords(unitCell)];
  const cell = sheet.cellAt(row, column);
  const format = (cell?.format ?? "").toLowerCase();
  if (per !== null && per !== "share")
    return [per.of === "water" ? "g per 100 g of water" : "% of the mix", 100 / per.grams];
  if (/%/.test(format.replace(/"[^"]*"|\\./g, ""))) return ["% of the mix", 100];
  const saysPercent = /%|per ?cent|prozent/.test(`${plain} ${beside}`);
  if (per === "share" || beside.startsWith("%") || unitFromWord(unitCell) === "%") {
    const isFraction = typeof cell?.value === "number" && Math.abs(cell.value) <= 1 && !saysPercent;
    return ["% of the mix", isFraction ? 100 : 1];
  }
  const said = `${plain} ${beside} ${format}`;
  if (/\bkg(?!\p{L})|kilogram/u.test(said)) return ["g", 1000];
  if (/\bg(?!\p{L})|\bgrams?\b|gramm/u.test(said)) return ["g", 1];
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

/** A label with its unit of mass where that stands behind the number: "Dissolved in the water | 645 | g" is no share. */
function withMass({ sheet, row, column, label }: LabelledAnswer): string {
  const shown = unitFromFormat(sheet.cellAt(row, column)?.format);
  const unit = unitFromWord(textAt(sheet, row, column + 1)) ?? shown;
  return unit !== null && isMass(unit) && unitFromHeader(label) === null
    ? `${label}, ${unit}`
    : label;
}

function statedPart(context: AuditContext, answer: LabelledAnswer): StatedPart[] {
  const { sheet, row, column, label, block, recipe } = answer;
  const labelled = partOf(withMass(answer));
  const bare = labelled === null ? bareShare(label) : null;
  const ofTotal = labelled === null ? partPerTotal(answer) : null;
  const isOfVessel = labelled === null && ofTotal === null && saysWaterOfVessel(label);
  const unsaid = isOfVessel ? "water" : bare === null ? null : "dissolved solids";
  const part = labelled?.part ?? ofTotal ?? plainPartOf(label) ?? unsaid;
  const read = basisOf(answer, labelled?.per ?? bare ?? perOfHeading(answer));
  const cell = sheet.cellAt(row, column);
  const typed = cell?.value;
  if (part === null || read === null || typeof typed !== "number") return [];
  // Nobody types less than nothing: the label is of something else.
  if (typed < 0 && cell?.formula === undefined) return [];
  // The water of a solution is what it is made with.
  if (part === "water" && isClassBlock(block)) return [];
  const [basis, factor] = read;
  const mix = context.mixOf(block, recipe);
  const right = mix.whole && mix.items.length > 0 ? partIn(mix, part, basis) : null;
  const value = typed * factor;
  // A list without any water, beside a label that has some, is not all of what the label is about.
  // Where no solid is dissolved, a share that names nothing is that of something else.
  if ((part === "water" || bare !== null) && right === 0) return [];
  if (isOfVessel && (basis !== "g" || !isWaterOfMix(mix, value))) return [];
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
  const answers = [...partAnswers(context.workbook, blocks), ...totalsOfWater(context, blocks)];
  const found = answers.flatMap((answer) => statedPart(context, answer));
  known.set(context.blocks, found);
  return found;
}
