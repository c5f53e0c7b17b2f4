import { measures, type Measure } from "./measures";
import { normalName } from "./normalName";

const index = new Map<string, Measure>();
for (const measure of measures) {
  for (const name of [measure.name, ...measure.aliases]) index.set(normalName(name), measure);
}

/** The unit of that name, regardless of case, spacing and a full stop at its end. */
export function findMeasure(name: string): Measure | undefined {
  return index.get(normalName(name).replace(/\.$/, ""));
}
