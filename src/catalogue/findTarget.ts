import { normalName } from "./normalName";
import type { ServingTarget } from "./target";
import { servingTargets } from "./targets";

const index = new Map<string, ServingTarget>();
for (const target of servingTargets) {
  const names = [target.name, ...target.aliases.en, ...target.aliases.de];
  for (const name of names) index.set(normalName(name), target);
}

/** The target of that name, in English or German, regardless of case and spacing. */
export function findTarget(name: string): ServingTarget | undefined {
  return index.get(normalName(name));
}
