import { cautions } from "../../src/catalogue/cautions";
import { ingredients } from "../../src/catalogue/ingredients";
import { servingTargets } from "../../src/catalogue/targets";
import { solutes } from "../../src/catalogue/solutes";
import { WITH_ICE, WITHOUT_ICE } from "../../src/catalogue/textureScale";
import { refusalsOf } from "../../src/help/refusals";
import { shownCell } from "../../src/recipe/shownCell";
import { callFunction } from "../../src/worksheet/callFunction";
import { worksheetFunctions } from "../../src/worksheet/functions";
import { germanLanguage } from "../../src/worksheet/words/germanSentences";
import { sentenceTranslator } from "../../src/worksheet/words/sentenceTranslator";
import { column } from "./ask";
import { leftOverSentences } from "./leftOverSentences";
import { sourceTemplates } from "./sourceTemplates";

const german = sentenceTranslator(germanLanguage);

/** Problems whose German is still missing. This list may only shrink. */
const WITHOUT_GERMAN: readonly string[] = [];

const templates = sourceTemplates("engine", "recipe", "worksheet", "adjust", "catalogue");

test("every sentence that a problem says has its German", () => {
  const missing = templates
    .filter(({ isProblem, sample }) => isProblem && / /.test(sample) && sample !== ", ")
    .filter(({ sample }) => german(sample) === null)
    .map(({ file, sample }) => `${file}: ${sample}`);
  expect(missing).toEqual(WITHOUT_GERMAN);
});

/** WORKING of mixes that take all of its ways. */
const MIXES: readonly (readonly [grams: Readonly<Record<string, number>>, temperatureC: number])[] =
  [
    [{ "whole milk": 500, sucrose: 120, "dark chocolate (pieces)": 50, "fine salt": 2 }, -14],
    [{ water: 300, sucrose: 60, "spirit 40 % vol": 40, "fine salt": 2 }, -18],
    [{ honey: 100 }, -18],
    [{ water: 50, sucrose: 20 }, -50],
    [{ water: 100 }, -5],
  ];

const workings = MIXES.flatMap(([grams, temperatureC]) =>
  callFunction("WORKING", column(Object.keys(grams)), column(Object.values(grams)), temperatureC)
    .slice(1)
    .flatMap(([step, formula, , result]) => [step, formula, result])
    .filter((cell): cell is string => typeof cell === "string"),
);

/** Formulas that read the same in both languages. */
const SAME_IN_BOTH = ["−ln(a_ice) / M_w", "mol × w(θ)", "Gordon–Taylor"];

const said: readonly string[] = [
  ...worksheetFunctions.flatMap((definition) =>
    refusalsOf(definition).map(({ problem }) => problem.message),
  ),
  ...[...ingredients, ...solutes]
    .filter((each) => !("food" in each) || each.food)
    .flatMap(({ name }) => callFunction("CAUTIONS", name, 100).slice(1))
    .map(([text]) => text as string),
  ...Object.values(cautions).map(({ text }) => text),
  ...workings.filter((text) => !SAME_IN_BOTH.includes(text)),
  ...[...WITH_ICE, ...WITHOUT_ICE].map(({ word }) => word),
  ...servingTargets.map(({ note }) => note),
  ...["scooped at −13", "drinkable slush"].flatMap((target) =>
    [30, 70, 200].map(
      (grams) =>
        callFunction("CHECK", [["water"], ["sucrose"]], [[200], [grams]], target)[0]![0] as string,
    ),
  ),
];

/** Of a German sentence what is its own: no quoted names, no argument's name, no place. */
const ownWords = (sentence: string): string =>
  sentence.replace(/„[^“]*“/g, "").replace(/^\w+(?:, Zeile \d+)?: /, "");

test("what the functions say in earnest comes out in German, to the last part", () => {
  expect(said.length).toBeGreaterThan(500);
  const wrong = said.flatMap((sentence) => {
    const answer = german(sentence);
    const isGerman =
      answer !== null &&
      !/\b(?:the|is|of|and|or|with|are|for|not|from|above|below|row|column|expected)\b/.test(
        ownWords(answer),
      ) &&
      !/\d\.\d/.test(ownWords(answer));
    return isGerman ? [] : [`${sentence} → ${answer}`];
  });
  expect([...new Set(wrong)]).toEqual([]);
});

test("no German sentence is left over from an English one that is gone", () => {
  const english = [
    ...templates.map(({ sample }) => sample),
    ...sourceTemplates("foundation").map(({ sample }) => sample),
    ...[true, false].map(shownCell),
    ...said.flatMap((sentence) => [sentence, ...sentence.split(/, |: /)]),
  ];
  expect(leftOverSentences(germanLanguage, null, english)).toEqual([]);
});

test("both languages have the same holes", () => {
  const holes = (text: string) => (text.match(/\{\w+\??\}/g) ?? []).sort();
  for (const [english, other] of Object.entries(germanLanguage.sentences)) {
    expect([english, holes(other)]).toEqual([english, holes(english)]);
  }
});

describe("parts of a sentence", () => {
  test.each([
    [
      'grams, row 3, column 2: the amount of "milk 3.5 %" is -2.5 g; it must be from 0 to 1e9 g.',
      "grams, Zeile 3, Spalte 2: die Menge von „milk 3.5 %“ ist −2,5 g; erlaubt sind 0 bis 1e9 g.",
    ],
    [
      'ownIngredients, row 2 ("jam"): the parts add up to 90.0 g, 10.0 g too little; 100 ± 2 g is expected (what does not dissolve goes to inert).',
      "ownIngredients, Zeile 2 („jam“): die Teile ergeben 90,0 g, 10,0 g zu wenig; erwartet werden 100 ± 2 g (was sich nicht löst, gehört zu inert).",
    ],
    [
      'items: "is expected" is neither in the catalogue nor an own ingredient; the nearest name is "a", "b" or "c".',
      "items: „is expected“ steht weder im Katalog noch unter den eigenen Zutaten; am nächsten kommt „a“, „b“ oder „c“.",
    ],
    ["Allergens: milk, tree nuts.", "Allergene: Milch, Schalenfrüchte."],
    [
      "wishes, 2: the ice fraction is to go from 0.7 to 0.5; the smaller comes first.",
      "wishes, 2: für den Eisanteil ist 0,7 bis 0,5 gewünscht; das Kleinere kommt zuerst.",
    ],
  ])("%s", (english, expected) => expect(german(english)).toBe(expected));

  test("a sentence that is not known stays unknown", () => {
    expect(german("My grandmother's note.")).toBeNull();
    expect(german("My note: the milk.")).toBeNull();
  });
});
