import { parseCellName } from "../../workbook/address";
import { contains, referencesOf } from "../../workbook/references";
import type { WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import { explainResult, SALT_AS_ONE } from "../answers/explainResult";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { changedMix, gramsIn } from "../mix";
import { isNear } from "../solutions/molesOf";
import { countedTimes } from "../solutions/countedTimes";
import { pureSolute } from "../solutions/pureSolute";
import { isClassBlock } from "../recipes/classSheet";
import type { Place, RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { saidOf } from "../recipes/saidOf";
import type { StatedResult } from "../answers/statedResults";

/** The rule to which what is found here belongs. */
export const PARTICLES = { id: "particles-not-counted", severity: "error" } as const;

interface SheetPlace extends Place {
  readonly sheet: WorkbookSheet;
}

function findingOf(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  { sheet, ...place }: SheetPlace,
  says: string,
): Finding[] {
  const [recipe] = block.recipes;
  const ions = pureSolute(name.item, block.ownIngredients)?.vantHoff.value ?? 1;
  if (recipe === undefined) return [];
  const mix = context.mixOf(block, recipe);
  const grams = gramsIn(mix, name);
  return [
    findingAt(PARTICLES, sheet, place, {
      message: `${name.item} falls into ${ions} particles, but ${says} once.`,
      effect: mixEffect(changedMix(mix, name, { grams: grams / ions }), mix),
      fix: `Multiply by the van 't Hoff factor ${ions}.`,
    }),
  ];
}

/** Salts that the sheet itself gives no wrong number of particles, which another rule would tell. */
const saltsOf = (block: RecipeBlock): readonly RecipeName[] =>
  block.names.filter((name) => {
    const ions = pureSolute(name.item, block.ownIngredients)?.vantHoff.value ?? 1;
    const place = saidOf(block, name, "particles");
    const given = place === null ? null : place.sheet.cellAt(place.row, place.column)?.value;
    return ions >= 2 && (place === null || (typeof given === "number" && given > 1));
  });

/** Moles or molalities of particles in which a salt has its formula units. */
function inCounted(context: AuditContext, block: RecipeBlock): Finding[] {
  const [recipe] = block.recipes;
  if (recipe === undefined) return [];
  return saltsOf(block).flatMap((name) => {
    const counted = countedTimes(context, block, recipe, name);
    if (counted === null || !isNear(counted.times, 1)) return [];
    const { place, moles } = counted;
    const says = `"${place.label}" counts each of its ${rounded(moles, 4)} mol`;
    return findingOf(context, block, name, place, says);
  });
}

/** A result that comes out when every salt is taken for one particle, on a sheet that works with moles. */
function inResults(context: AuditContext, block: RecipeBlock): Finding[] {
  const [recipe] = block.recipes;
  const all = context.results.filter(
    (result) =>
      result.block === block &&
      (result.role === "depression" || result.role === "freezing point") &&
      isSaltAsOne(context, result),
  );
  // A freezing point worked out of a depression takes its mistake from there.
  const first = all.find((result) => !all.some((other) => reads(result, other))) ?? all[0];
  // One whose particles are counted in their own column does not make the difference.
  const [salt] = saltsOf(block).filter(
    (name) =>
      (recipe === undefined || countedTimes(context, block, recipe, name) === null) &&
      (first === undefined || !readsFactors(context, first)),
  );
  return first === undefined || salt === undefined
    ? []
    : findingOf(context, block, salt, first, `"${first.label}" counts each unit of it`);
}

/** Whether the formula of one cell reads another. */
const reads = ({ sheet, row, column }: SheetPlace, other: SheetPlace): boolean =>
  referencesOf(sheet.cellAt(row, column)?.formula ?? "").some(
    ({ sheet: named, range }) =>
      (named ?? sheet.name) === other.sheet.name && contains(range, other.row, other.column),
  );

/** Whether an answer reads a number of particles, be it that of another solution: then none is left out. */
function readsFactors({ blocks }: AuditContext, { sheet, row, column }: StatedResult): boolean {
  return blocks
    .filter(isClassBlock)
    .flatMap((block) => block.names.map((name) => saidOf(block, name, "particles")))
    .some((place) => place !== null && reads({ sheet, row, column }, place));
}

function isSaltAsOne(
  context: AuditContext,
  { block, recipe, role, value, unit, sheet, row, column }: StatedResult,
): boolean {
  if (role !== "depression" && role !== "freezing point") return false;
  if (sheet.cellAt(row, column)?.formula === undefined) return false; // a typed one differs, whatever the moles say
  const explained = explainResult(context.mixOf(block, recipe), role, value, unit === "°F");
  return explained?.mistakes.length === 1 && explained.mistakes[0] === SALT_AS_ONE;
}

/** Class sheets that have a factor, or moles of particles, and do not use it for one salt. */
export function unusedFactors(context: AuditContext, told: readonly Finding[]): Finding[] {
  const isTold = (block: RecipeBlock) =>
    told.some(
      ({ sheet, cell }) =>
        sheet === block.sheet.name &&
        block.names.some(({ row }) => parseCellName(cell)?.row === row),
    );
  return context.blocks.filter(isClassBlock).flatMap((block) => {
    if (isTold(block)) return [];
    const found = inCounted(context, block);
    return found.length > 0 ? found : inResults(context, block);
  });
}
