import { furtherPhrases } from "./furtherPhrases";
import { headingMeanings } from "./headingMeanings";
import { headingPhrases } from "./headingPhrases";
import { labelMeaning } from "./labelMeaning";
import { labelPhrases } from "./labelPhrases";
import { sheetPhrases } from "./sheetPhrases";

/** Labels that are read as something else. This list may only shrink. */
const MISREAD = new Set([
  "von der gesamten Mischung ist Eis",
  "Wassergehalt Erdbeeren %",
  "Ice per kg of mix (g)",
  "Gramm Eis je kg Mischung",
  "Zucker je 100 ml Wasser",
  "Wareneinsatz",
  "Final product",
  "b",
  "Inhalt",
  "in (unit)",
  "served from",
  ...["Moisture", "Proportion of water", "Ice", "ABW", "Lot", "Texture", "Charge", "Konsistenz"],
]);

/** Headings for which what is no heading must not be taken: others end in no harm by their places. */
const OF_OTHERS = ["target", "total row", "molar mass", "moles", "particles", "allergens"];

const phrases = [labelPhrases, headingPhrases, furtherPhrases, sheetPhrases].flatMap((list) =>
  Object.entries<readonly string[]>(list).flatMap(([means, labels]) =>
    labels.map((label) => ({ means, label })),
  ),
);

function isReadRight(means: string, label: string): boolean {
  const isRead = headingMeanings[means];
  if (isRead !== undefined) return isRead(label);
  // A number that was measured is none of ours to recompute.
  const isNone = means === "none" || means === "measured";
  if (labelMeaning(label) !== (isNone ? "none" : means)) return false;
  return means !== "none" || !OF_OTHERS.some((other) => headingMeanings[other]?.(label) === true);
}

test.each(phrases.filter(({ label }) => !MISREAD.has(label)))(
  "$means: $label",
  ({ means, label }) => {
    expect(isReadRight(means, label)).toBe(true);
  },
);

test("the labels that are misread still are", () => {
  const misread = phrases.filter(({ label }) => MISREAD.has(label));
  expect(misread.filter(({ means, label }) => isReadRight(means, label))).toEqual([]);
  expect(misread).toHaveLength(MISREAD.size);
});
