import { pureSolute } from "../solutions/pureSolute";
import { cellEdit, numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import type { CellEdit, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { countedPiecesGrams, doesNotDissolve, misreadingOf } from "../amounts/misreadParts";
import { changedMix, gramsIn, type MeantMix } from "../mix";
import { amountOf } from "../recipes/amounts/amountOf";
import { isBlank, textAt } from "../recipes/cells";
import type { Role } from "../recipes/headings/headerRole";
import type { Place, RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { saidOf, type SaidPlace } from "../recipes/saidOf";
import type { Rule } from "../rule";
import { statedParts, type StatedPart } from "../answers/statedParts";

const identity = { id: "inclusion-as-solute", severity: "error" } as const;

/** Columns in which a number counts an ingredient as dissolved, the plainest first. */
const COUNTING: readonly Role[] = ["counts as solute", "moles", "molality", "molar mass"];

/** Where the sheet counts an ingredient as dissolved, and with how much. */
function countedAt(
  block: RecipeBlock,
  name: RecipeName,
): { place: SaidPlace; role: Role; number: number | null } | null {
  for (const role of COUNTING) {
    const place = saidOf(block, name, role);
    const value =
      place === null ? null : (place.sheet.cellAt(place.row, place.column)?.value ?? null);
    if (place === null || (value === null && role !== "moles")) continue;
    // Left out of the moles it is not counted, whatever molar mass stands beside.
    if (value === null) return null;
    if (typeof value === "number" && value > 0) return { place, role, number: value };
    if (
      value === true ||
      /^(yes|y|x|true|ja|j)$/i.test(textAt(place.sheet, place.row, place.column))
    ) {
      return { place, role, number: null };
    }
  }
  return null;
}

/** The mix with the inclusion taken for sugar: by its moles where the sheet has them, else gram for gram. */
function asSugar(meant: MeantMix, name: RecipeName, role: Role, number: number | null): MeantMix {
  const grams = gramsIn(meant, name);
  const molarMass = pureSolute("sucrose")?.molarMass.value;
  if (molarMass === undefined || number === null)
    return changedMix(meant, name, { item: "sucrose" });
  if (role === "moles")
    return changedMix(meant, name, { item: "sucrose", grams: number * molarMass });
  const equal = role === "molar mass" ? (grams * molarMass) / number : grams;
  return changedMix(meant, name, { item: "sucrose", grams: equal });
}

const NO: Readonly<Record<string, string>> = { ja: "nein", j: "n", yes: "no", y: "n", x: "" };

/** Moles are emptied and marks unset; a molar mass is left, since moles divide by it. */
function leavingOut({ sheet, ...place }: SaidPlace, role: Role): readonly CellEdit[] {
  if (role === "moles" || role === "molality") return cellEdit(sheet, place, "");
  const value = sheet.cellAt(place.row, place.column)?.value;
  if (role !== "counts as solute") return [];
  if (typeof value === "number") return numberEdit(sheet, place, 0);
  const no = NO[textAt(sheet, place.row, place.column).toLowerCase()];
  return no === undefined ? [] : cellEdit(sheet, place, no);
}

/** How many recipes one name stands for: of the rows of a table it may be said above, once. */
const timesNamed = ({ blocks }: AuditContext, { sheet }: RecipeBlock, { row, column }: Place) =>
  blocks.filter(
    (block) =>
      block.sheet === sheet &&
      block.answers !== undefined &&
      block.names.some((name) => name.row === row && name.column === column),
  ).length;

/** Words that name what is worked out stand at most so far left of it. */
const NAMED_WITHIN = 8;

/** What stays whole: an ingredient by its own name, or by that of the row of another sheet that works with its mass. */
function wholeItem(
  { sheet, ownIngredients }: RecipeBlock,
  { item }: RecipeName,
  at: SaidPlace,
): string | undefined {
  const isElsewhere = at.sheet !== sheet;
  const left = Array.from({ length: isElsewhere ? NAMED_WITHIN : 0 }, (_, far) => at.column - far);
  const gap = left.findIndex((column) => column < 0 || isBlank(at.sheet, at.row, column));
  const named = (gap < 0 ? left : left.slice(0, gap)).map((column) =>
    textAt(at.sheet, at.row, column),
  );
  return [item, ...named].find((each) => each !== "" && doesNotDissolve(each, ownIngredients));
}

function finding(context: AuditContext, block: RecipeBlock, name: RecipeName): Finding | null {
  const counted = countedAt(block, name);
  const item = counted === null ? undefined : wholeItem(block, name, counted.place);
  if (counted === null || item === undefined) return null;
  const recipe = block.recipes.find((one) => (amountOf(block, one, name).grams ?? 0) > 0);
  if (recipe === undefined) return null;
  const meant = changedMix(context.mixOf(block, recipe), name, { item });
  const place =
    timesNamed(context, block, name) > 1 ? { sheet: block.sheet, ...name } : counted.place;
  return findingAt(identity, place.sheet, place, {
    message: `"${item}" is counted as dissolved, but it stays whole: it adds mass and cost and does not lower the freezing point.`,
    effect: mixEffect(asSugar(meant, name, counted.role, counted.number), meant),
    fix: "Leave it out of the moles and of the solids that dissolve.",
    edits: place === counted.place ? leavingOut(counted.place, counted.role) : [],
  });
}

/** What dissolves, stated with the nuts and pieces in it. */
function partFinding(stated: StatedPart): Finding[] {
  const { sheet, label, value, right, basis, factor } = stated;
  const pieces = countedPiecesGrams(stated);
  if (pieces === null || misreadingOf(stated) !== "inclusions") return [];
  const [from, to] = [rounded(value, 1), rounded(right, 1)];
  return [
    findingAt(identity, sheet, stated, {
      message: `"${label}" counts the ${rounded(pieces, 1)} g that stay whole, too: without them it is ${to}.`,
      effect: { quantity: "dissolved solids", from, to, unit: basis === "g" ? "g" : "%" },
      fix: "Leave it out of the moles and of the solids that dissolve.",
      edits: numberEdit(sheet, stated, rounded(to / factor, 4)),
    }),
  ];
}

export const inclusionAsSolute: Rule = {
  ...identity,
  title: "Something that does not dissolve is counted as a solute",
  find: (context) => [
    ...context.blocks.flatMap((block) =>
      block.names.flatMap((name) => finding(context, block, name) ?? []),
    ),
    ...statedParts(context).flatMap(partFinding),
  ],
};
