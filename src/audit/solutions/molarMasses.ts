import type { Solute } from "../../catalogue/solute";
import { solutes } from "../../catalogue/solutes";
import { cellEdit, formulaEdit, numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { effectOfCounting } from "../answers/effectOfCounting";
import { rounded } from "../effect";
import type { CellEdit, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { withNumber } from "../formulas/formulaNumbers";
import { hydrateOfSolute, pureSolute } from "./pureSolute";
import { amountOf } from "../recipes/amounts/amountOf";
import { textAt } from "../recipes/cells";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { SaidPlace } from "../recipes/saidOf";

/** The rule to which what is found here belongs. */
export const SOLUTE_CONSTANT = { id: "constant-of-a-solute", severity: "error" } as const;

/** 58 for salt and 340 for sucrose are rounded, if boldly; crystal water makes 5 % and more. */
const MOLAR_MASS_TOLERANCE = 0.012;
/** The same substance with or without crystal water, when it is that one's molar mass that was given. */
function twinOf(solute: Solute, molarMass: number): Solute | null {
  const twins = [
    hydrateOfSolute(solute),
    solutes.find(({ name }) => name === solute.hydrateOf?.solute),
  ];
  const isIt = (twin: Solute) =>
    Math.abs(twin.molarMass.value / molarMass - 1) < MOLAR_MASS_TOLERANCE;
  return twins.find((twin) => twin !== undefined && isIt(twin)) ?? null;
}

/** Grams in the unit of a molar mass: it may be written in kg/mol. */
function gramsIn({ sheet, row, column, label }: SaidPlace): number {
  const besides = [label, textAt(sheet, row, column + 1), textAt(sheet, row, column - 1)];
  return besides.some((text) => /kg ?\/ ?mol|kg ?(·|\*)? ?mol ?(\^?-1|⁻¹)/i.test(text)) ? 1000 : 1;
}

/** A molar mass that is not the catalogue's. */
export function molarMassFinding(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  place: SaidPlace,
): Finding | null {
  const { sheet } = place;
  const value = sheet.cellAt(place.row, place.column)?.value;
  const solute = pureSolute(name.item, block.ownIngredients);
  if (typeof value !== "number" || value <= 0 || solute === null) return null;
  const right = solute.molarMass.value;
  const unit = gramsIn(place);
  const given = value * unit;
  if (Math.abs(given / right - 1) <= MOLAR_MASS_TOLERANCE) return null;
  const twin = twinOf(solute, given);
  const hint = twin === null ? "" : `; ${rounded(given, 2)} is that of ${twin.name}`;
  return findingAt(SOLUTE_CONSTANT, sheet, place, {
    message: `The molar mass of ${name.item} is given as ${rounded(given, 3)}, it is ${rounded(right, 2)} g/mol${hint}.`,
    effect: effectOfCounting(context, block, name, right / given),
    fix: `Use ${rounded(right, 2)}${twin === null ? "" : `, or name the ingredient ${twin.name}`}.`,
    edits: numberEdit(sheet, place, unit === 1 ? rounded(right, 2) : right / unit),
  });
}

/** Typed moles are put right by the two molar masses; in a formula the one typed into it. */
function molesEdit(
  { sheet, ...place }: SaidPlace,
  used: Solute,
  right: Solute,
): readonly CellEdit[] {
  const cell = sheet.cellAt(place.row, place.column);
  const [from, to] = [used.molarMass.value, right.molarMass.value];
  const isUsed = (value: number) => Math.abs(value / from - 1) < MOLAR_MASS_TOLERANCE;
  if (cell?.formula !== undefined)
    return formulaEdit(sheet, place, withNumber(cell.formula, isUsed, rounded(to, 2)));
  return typeof cell?.value === "number"
    ? cellEdit(sheet, place, rounded((cell.value * from) / to, 4))
    : [];
}

/** Without a column of molar masses the moles still tell which one was used, where it is the twin's. */
export function molesFinding(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  place: SaidPlace,
): Finding | null {
  const moles = place.sheet.cellAt(place.row, place.column)?.value;
  const solute = pureSolute(name.item, block.ownIngredients);
  const [recipe] = block.recipes;
  if (typeof moles !== "number" || moles <= 0 || solute === null || recipe === undefined)
    return null;
  const used = (amountOf(block, recipe, name).grams ?? 0) / moles;
  const twin = used > 0 ? twinOf(solute, used) : null;
  if (twin === null || block.recipes.length > 1) return null;
  const right = solute.molarMass.value;
  return findingAt(SOLUTE_CONSTANT, place.sheet, place, {
    message: `The moles of ${name.item} are those of ${twin.name} (${rounded(used, 2)} g/mol); its own molar mass is ${rounded(right, 2)} g/mol.`,
    effect: effectOfCounting(context, block, name, right / used),
    fix: `Divide by ${rounded(right, 2)}, or name the ingredient ${twin.name}.`,
    edits: molesEdit(place, twin, solute),
  });
}
