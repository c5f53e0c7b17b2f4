import type { Dose } from "./mix";
import { solutionRows } from "./solutionRows";

/** The substance whose printed densities and indices stand in for one without. */
export function standIn({ name, kind }: Dose["substance"]): string {
  if (Object.hasOwn(solutionRows, name)) return name;
  switch (kind) {
    case "saccharide polymer":
      return "maltose";
    case "polyol":
      return "mannitol";
    case "salt":
    case "lumped":
      return name === "fruit acids" ? "citric acid" : "sodium chloride";
    case "acid":
      return "citric acid";
    case "alcohol":
      return "ethanol";
    default:
      return "sucrose";
  }
}
