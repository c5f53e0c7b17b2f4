import { keyOf, rolesByFormula, type ClassRole } from "./rolesByFormula";
import type { FinderContext } from "../finderContext";
import { headerRole, type Role } from "../headings/headerRole";

/** A row of a table of substances that stand beside each other. */
export interface LabelledRow {
  readonly row: number;
  readonly label: string;
}

const SAID = new Set<Role | null>([
  ...(["molar mass", "particles", "moles", "molality", "depression", "freezing point"] as const),
]);
const BY_FORMULA = new Set<ClassRole | null>(["molar mass", "particles", "moles", "molality"]);

/** The role that all known cells of a row share. */
function sharedIn(
  roles: ReadonlyMap<string, ClassRole>,
  row: number,
  columns: readonly number[],
): ClassRole | null {
  const [first, ...others] = columns.flatMap((column) => roles.get(keyOf({ row, column })) ?? []);
  return first !== undefined && others.every((one) => one === first) ? first : null;
}

/**
 * What each row says of the substances above it: by its label, else, where rows of a class stand there, by what the
 * formulas do with its numbers.
 */
export function rolesOfRows(
  context: FinderContext,
  rows: readonly LabelledRow[],
  columns: readonly number[],
): readonly (Role | null)[] {
  const said = rows.map(({ label }) => headerRole(label));
  const isUnsaid = said.some((role) => role === null);
  if (!isUnsaid || !said.some((role) => role === "molar mass" || role === "moles")) return said;
  const known = rows.flatMap(({ row }, at) => {
    const role = said[at] ?? null;
    return SAID.has(role)
      ? columns.map((column) => [keyOf({ row, column }), role as ClassRole] as const)
      : [];
  });
  const roles = rolesByFormula(context, new Map(known));
  return rows.map(({ row }, at) => {
    const shared = said[at] === null ? sharedIn(roles, row, columns) : null;
    return BY_FORMULA.has(shared) ? (shared as Role) : (said[at] ?? null);
  });
}
