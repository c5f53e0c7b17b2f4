import { isBareLabel, isQuantity, saysUnit } from "../../src/audit/amounts/inputLabel";
import { findingsOf, of } from "./findingsOf";
import { sayingPhrases } from "./sayingPhrases";

/** Texts that are read as something else. This list may only shrink. */
const MISREAD = new Set([
  "tell customers: there is lactose in this one",
  "Hinweis für Gäste: mit Kuhmilch hergestellt, für Laktoseintolerante nicht geeignet",
  "scoops per tub",
  "Percentage of waste",
  "Menge in dag",
]);

/** What carries what has to be said. */
const CARRIERS: Readonly<Record<string, string>> = {
  "tells allergens: milk": "whole milk",
  "tells allergens: egg": "egg yolk",
  "tells allergens: nuts": "hazelnut paste",
  "tells allergens: gluten": "shortbread",
  "tells allergens: soya": "soy drink, sweetened",
  "tells allergens: sesame": "tahini",
  "tells allergens: several": "whole milk",
  "tells honey: infants": "honey, average",
  "tells raw egg": "egg yolk",
  "tells alcohol": "vodka 40 %",
  "tells glycerol: children": "glycerol",
};

const sheetWith = (item: string, text: string) => [
  ["Ingredient", "Amount (g)"],
  ["Water", 600],
  ["Sucrose", 150],
  [item, 90],
  ["Total", 840],
  [],
  [],
  [text],
];

/** What is missing on a sheet with an ingredient and a text, part by part. */
const unsaid = (item: string, text: string): string[] =>
  of(findingsOf(sheetWith(item, text)), "caution-not-named").flatMap(({ message }) =>
    message.replace(/^[^:]*: |\.$/g, "").split("; "),
  );

const bare = new Map(Object.values(CARRIERS).map((item) => [item, unsaid(item, "")]));
const isToldLess = (item: string, text: string) =>
  unsaid(item, text).length < (bare.get(item)?.length ?? 0);

const READ: Readonly<Record<string, (text: string) => boolean>> = {
  "tells no caution": (text) => ![...bare.keys()].some((item) => isToldLess(item, text)),
  "unit told": (text) => saysUnit(text) || !isBareLabel(text) || !isQuantity(text),
  "unit not told": (text) => !saysUnit(text),
};

const phrases = Object.entries(sayingPhrases).flatMap(([means, texts]) =>
  texts.map((text) => ({ means, text })),
);

const isReadRight = ({ means, text }: (typeof phrases)[number]): boolean => {
  const carrier = CARRIERS[means];
  return carrier === undefined ? READ[means]?.(text) === true : isToldLess(carrier, text);
};

test("every carrier has something to be told", () => {
  expect([...bare].filter(([, parts]) => parts.length === 0)).toEqual([]);
});

test.each(phrases.filter(({ text }) => !MISREAD.has(text)))("$means: $text", (phrase) => {
  expect(isReadRight(phrase)).toBe(true);
});

test("the texts that are misread still are", () => {
  const misread = phrases.filter(({ text }) => MISREAD.has(text));
  expect(misread.filter(isReadRight)).toEqual([]);
  expect(misread).toHaveLength(MISREAD.size);
});
