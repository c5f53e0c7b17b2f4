import { partOf } from "../../src/audit/answers/partLabel";
import { plainPartOf } from "../../src/audit/answers/plainPart";
import { labelledBasis } from "../../src/audit/answers/resultLabel";
import { resultRole } from "../../src/audit/answers/resultRole";

/** What answer of a recipe the audit takes a label for, in the words of the lists of phrases; "none" for no answer. */
export function labelMeaning(label: string): string {
  const role = resultRole(label);
  if (role === "ice fraction") {
    const basis = labelledBasis(label);
    return basis === null ? "ice" : `ice of ${basis}`;
  }
  if (role !== null) return role;
  const labelled = partOf(label);
  if (labelled === null) return plainPartOf(label) ?? "none";
  const { part, per } = labelled;
  if (part !== "sugars") return part === "ethanol" ? "alcohol" : part;
  if (per === null) return "sugars";
  return per !== "share" && per.of === "water" ? "sugar per 100 g water" : "sugar share";
}
