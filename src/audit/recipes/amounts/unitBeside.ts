import type { Role } from "../headings/headerRole";

/** The column of units; not one that stands with other amounts on the other side of the names. */
export function unitBeside(
  roles: ReadonlyMap<number, Role>,
  names: number,
  amounts: readonly number[],
): number | null {
  const isBeside = (column: number) =>
    amounts.some((each) => each < names === column < names) ||
    ![column - 1, column + 1].some((each) => roles.get(each) === "amount");
  const units = [...roles].filter(([, role]) => role === "unit").map(([column]) => column);
  return units.find(isBeside) ?? null;
}
