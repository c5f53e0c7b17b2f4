import { parseCellName } from "../../workbook/address";
import { contains } from "../../workbook/references";
import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Solute } from "../../catalogue/solute";
import { effectOfCounting } from "../answers/effectOfCounting";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { rangesReadHere } from "../formulas/rangesReadHere";
import { molarMassFinding, molesFinding, SOLUTE_CONSTANT } from "../solutions/molarMasses";
import { tabledConstants } from "../solutions/constantTables";
import { pureSolute } from "../solutions/pureSolute";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { saidOf, type SaidPlace } from "../recipes/saidOf";
import type { Rule } from "../rule";
import { toldOnce } from "../toldOnce";

/** Real salts count for a little less than their ions (0.85 at 1 mol/kg), never for more. */
const LEAST_PARTICLES = 0.84;

function particlesFinding(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  place: SaidPlace,
): Finding | null {
  const value = place.sheet.cellAt(place.row, place.column)?.value ?? null;
  const right = pureSolute(name.item, block.ownIngredients)?.vantHoff.value;
  if (right === undefined || (value !== null && typeof value !== "number")) return null;
  const counted = value ?? 1;
  if (counted >= LEAST_PARTICLES * right && counted <= right * 1.001) return null;
  const given = value === null ? "not given" : `given as ${rounded(value, 3)}`;
  return findingAt(SOLUTE_CONSTANT, place.sheet, place, {
    message: `The number of particles (van 't Hoff factor) of ${name.item} is ${given}; one formula unit gives ${right}.`,
    effect: effectOfCounting(context, block, name, counted / right),
    fix: `Use ${right}.`,
    edits: numberEdit(place.sheet, place, right),
  });
}

/** Whether moles are worked out with a molar mass that is told to be wrong already. */
const isFromTold = ({ sheet, row, column }: SaidPlace, told: readonly Finding[]): boolean =>
  told.length > 0 &&
  rangesReadHere(sheet, { row, column }).some((range) =>
    told.some(({ sheet: home, cell }) => {
      const place = home === sheet.name ? parseCellName(cell) : null;
      return place !== null && contains(range, place.row, place.column);
    }),
  );

function findFor(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  told: readonly Finding[],
): Finding[] {
  const [molarMass, particles] = [
    saidOf(block, name, "molar mass"),
    saidOf(block, name, "particles"),
  ];
  const moles = molarMass === null ? saidOf(block, name, "moles") : null;
  return [
    molarMass === null ? null : molarMassFinding(context, block, name, molarMass),
    moles === null || isFromTold(moles, told) ? null : molesFinding(context, block, name, moles),
    particles === null ? null : particlesFinding(context, block, name, particles),
  ].filter((found) => found !== null);
}

interface User {
  readonly block: RecipeBlock;
  readonly name: RecipeName;
}

/** The first recipe of each solute: what a constant of its own does is said of that one. */
function usersOf(blocks: readonly RecipeBlock[]): ReadonlyMap<Solute, User> {
  const users = new Map<Solute, User>();
  for (const block of blocks) {
    for (const name of block.names) {
      const solute = pureSolute(name.item, block.ownIngredients);
      if (solute !== null && !users.has(solute)) users.set(solute, { block, name });
    }
  }
  return users;
}

/** The same of a table of substances from which recipes take them. */
function findInTables(context: AuditContext): Finding[] {
  const constants = tabledConstants(context.workbook);
  const users = usersOf(constants.length === 0 ? [] : context.blocks);
  return constants.flatMap((constant) => {
    const { role, solute } = constant;
    const user = users.get(solute);
    if (user === undefined) return [];
    const { block, name } = user;
    const find = role === "particles" ? particlesFinding : molarMassFinding;
    return find(context, block, name, constant) ?? [];
  });
}

export const soluteConstant: Rule = {
  ...SOLUTE_CONSTANT,
  title: "A molar mass or a number of particles contradicts the catalogue",
  find: (context) => {
    const told = findInTables(context);
    return toldOnce([
      ...context.blocks.flatMap((block) =>
        block.names.flatMap((name) => findFor(context, block, name, told)),
      ),
      ...told,
    ]);
  },
};
