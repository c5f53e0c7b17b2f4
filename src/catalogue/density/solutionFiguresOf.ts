import { estimatedFigures } from "./estimatedFigures";
import { fittedFigures } from "./fittedFigures";
import type { SolutionFigures } from "./solutionFigures";

const byName = new Map([...fittedFigures, ...estimatedFigures].map((entry) => [entry.name, entry]));

/** Volume and refraction of a dissolved substance by its name; undefined when none are known. */
export const solutionFiguresOf = (name: string): SolutionFigures | undefined => byName.get(name);
