import { partOf } from "../../src/audit/answers/partLabel";
import { plainPartOf } from "../../src/audit/answers/plainPart";
import { labelledBasis } from "../../src/audit/answers/resultLabel";
import { resultRole } from "../../src/audit/answers/statedResults";
import { labelPhrases } from "./labelPhrases";

/** What the audit takes a label for, in the words of the list. */
function readAs(label: string): string {
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

/** Labels that are read as something else. This list may only shrink. */
const MISREAD = new Set(["von der gesamten Mischung ist Eis", "Wassergehalt Erdbeeren %"]);

describe.each(Object.entries(labelPhrases))("a label that means %s", (means, labels) => {
  // A number that was measured is none of ours to recompute.
  const wanted = means === "measured" ? "none" : means;
  test.each(labels.filter((label) => !MISREAD.has(label)))("%s", (label) => {
    expect(readAs(label)).toBe(wanted);
  });
});

test("the labels that are misread still are", () => {
  const readRight = Object.entries(labelPhrases).flatMap(([means, labels]) =>
    labels.filter((label) => MISREAD.has(label) && readAs(label) === means),
  );
  expect(readRight).toEqual([]);
});
