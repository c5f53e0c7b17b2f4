import { ALLERGENS } from "../../../src/catalogue/ingredient";
import { ingredients } from "../../../src/catalogue/ingredients";
import { english } from "../../../taskpane/words/english";
import { german } from "../../../taskpane/words/german";
import { loadWords } from "../../../taskpane/words/words";

test("a display language with a region finds its words, any other gets English", async () => {
  expect(await loadWords("de-AT")).toBe(german);
  expect(await loadWords("fr-FR")).toBe(english);
});

test.each([english, german])("every group and allergen has a word in $language", (words) => {
  for (const { group } of ingredients) expect(words.groups[group]).toBeTruthy();
  for (const allergen of ALLERGENS) expect(words.allergenNames[allergen]).toBeTruthy();
});

test("German says something other than English wherever it is a sentence", () => {
  const sentences = (value: unknown): string[] =>
    typeof value === "string"
      ? [value].filter((text) => text.split(" ").length > 3)
      : typeof value === "object" && value !== null
        ? Object.values(value).flatMap(sentences)
        : [];
  const inEnglish = new Set(sentences(english));
  expect(inEnglish.size).toBeGreaterThan(30);
  expect(sentences(german).filter((sentence) => inEnglish.has(sentence))).toEqual([]);
});
