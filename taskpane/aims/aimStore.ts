import { findTarget } from "../../src/catalogue/findTarget";
import { normalName } from "../../src/catalogue/normalName";
import { servingTargets } from "../../src/catalogue/targets";
import type { Words } from "../words/words";
import { catalogueAim, ownAim, type Aim, type AimBody } from "./aim";
import { aimRows, type AimTable } from "./aimTables";

/** What the pane knows of targets besides the catalogue's. */
export interface AimState {
  readonly tables: readonly AimTable[];
  /** Written or imported in the pane; no sheet keeps them yet. */
  readonly unkept: readonly AimBody[];
  /** The target chosen for a recipe, by the recipe's place; null where none is wanted. */
  readonly chosen: Readonly<Record<string, string | null>>;
}

export const NO_AIMS: AimState = { tables: [], unkept: [], chosen: {} };

/** The user's own targets: those of the workbook first, of several with one name the first. */
export function ownAims({ tables, unkept }: AimState): readonly Aim[] {
  const kept = tables.flatMap(aimRows).flatMap((row) => ("refused" in row ? [] : [row]));
  const found = new Map<string, Aim>();
  for (const aim of [...kept, ...unkept.map((body) => ownAim(body, null))]) {
    const key = normalName(aim.name);
    // A name of the catalogue means the catalogue's target in every cell: so it does here.
    if (findTarget(key) === undefined && !found.has(key)) found.set(key, aim);
  }
  return [...found.values()];
}

/** All targets that can be chosen: the user's own, then the catalogue's. */
export const allAims = (state: AimState, words: Words): readonly Aim[] => [
  ...ownAims(state),
  ...servingTargets.map((target) => catalogueAim(target, words)),
];

/** The target of that name, in either language. */
export function aimNamed(aims: readonly Aim[], name: string): Aim | null {
  const known = findTarget(name)?.name ?? name;
  return aims.find((aim) => normalName(aim.name) === normalName(known)) ?? null;
}
