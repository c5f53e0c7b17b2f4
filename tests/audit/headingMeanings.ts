import { allergensSaid } from "../../src/audit/cautions/allergensSaid";
import { formKind } from "../../src/audit/recipes/forms/formLabels";
import { headerRole } from "../../src/audit/recipes/headings/headerRole";
import { plainWords } from "../../src/audit/recipes/headings/plainWords";
import { lotWords } from "../../src/audit/recipes/roles/lotWords";
import { temperatureWords } from "../../src/audit/recipes/roles/temperatureWords";

type IsRead = (label: string) => boolean;

/** How each meaning of a heading or label that is no answer is recognised by the audit. */
export const headingMeanings: Readonly<Record<string, IsRead>> = {
  "ingredient heading": (label) => headerRole(label) === "name",
  "amount heading": (label) => headerRole(label) === "amount",
  // The weight of the lot is a total by its place in the list.
  "total row": (label) => headerRole(label) === "total" || lotWords.test(plainWords(label)),
  "unit heading": (label) => headerRole(label) === "unit",
  "price heading": (label) => headerRole(label) === "price",
  target: (label) => headerRole(label) === "target",
  "serving temperature": (label) =>
    headerRole(label) === "temperature" && temperatureWords.ofServing.test(plainWords(label)),
  "freezer temperature": (label) => headerRole(label) === "temperature",
  allergens: (label) => allergensSaid(label) === "heading",
  "mass of solute": (label) => ["mass", "solute"].includes(formKind(label) ?? ""),
  "mass of water": (label) => ["water", "solvent"].includes(formKind(label) ?? ""),
  // Chemists tell a molar mass from a mass by the capital letter.
  "molar mass": (label) => headerRole(label) === "molar mass" || formKind(label) === "molar mass",
  moles: (label) => headerRole(label) === "moles",
  molality: (label) => headerRole(label) === "molality",
  particles: (label) => headerRole(label) === "particles",
  "cryoscopic constant": (label) => headerRole(label) === "cryoscopic constant",
};
