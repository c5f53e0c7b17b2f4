import { cautions } from "../catalogue/cautions";
import type { CautionKey } from "../catalogue/ingredient";
import type { SourceKey } from "../foundation/bibliography";
import { isProblem } from "../foundation/problem";
import { allergenWords } from "./allergenWords";
import { gramsOfSubstance } from "./amounts";
import { freezingPointOfMix } from "./freezing";
import type { Item } from "./item";
import { sourceText, type CautionRow } from "./cautionRow";
import type { Mix } from "./mix";
import { shownTemperature } from "./shownTemperature";
import { solubilityRows } from "./solubilityRows";

/** Cautions that a dissolved substance brings with it, however it came into the mix. */
const BY_SUBSTANCE: readonly (readonly [string, CautionKey])[] = [
  ["ethanol", "alcohol"],
  ["glycerol", "glycerol and children"],
  ["xylitol", "xylitol and dogs"],
];

/** Traces of alcohol in vanilla or fruit are not worth a warning: 0.5 % by mass of the mix. */
const LEAST_SHARE = 0.005;

function keyedRows(mix: Mix): CautionRow[] {
  const causes = new Map<CautionKey, string[]>();
  const add = (key: CautionKey, name: string) =>
    causes.set(key, [...new Set([...(causes.get(key) ?? []), name])]);
  for (const { item, grams } of mix.parts) {
    if (grams > 0) for (const key of item.facts.cautions) add(key, item.name);
  }
  for (const [name, key] of BY_SUBSTANCE) {
    const enough = gramsOfSubstance(mix, name) > LEAST_SHARE * mix.totalGrams;
    if (enough && !causes.has(key)) add(key, name);
  }
  return [...causes].map(([key, names]) => ({
    text: cautions[key].text,
    because: names.join(", "),
    source: sourceText(cautions[key].sources),
  }));
}

const hasAllergenWords = ({ facts, allergenText }: Item): boolean =>
  allergenText !== null ||
  facts.allergens === "unknown" ||
  facts.allergens.length + (facts.allergensByMaker ?? []).length > 0;

/** Allergens item by item; never "free from", since cross-contact cannot be computed. */
function allergenRows({ parts }: Mix): CautionRow[] {
  const items = [...new Set(parts.filter(({ grams }) => grams > 0).map(({ item }) => item))];
  const rows = items.filter(hasAllergenWords).map((item) => ({
    text: `Allergens: ${allergenWords(item)}.`,
    because: item.name,
    source:
      item.facts.allergens === "unknown" ? item.source : sourceText(["usc343w", "eu1169_2011"]),
  }));
  return [
    ...rows,
    {
      text: "Traces from other foods made with the same tools cannot be computed: this is no statement that anything is free from an allergen.",
      because: "every recipe",
      source: sourceText(["eu1169_2011"]),
    },
  ];
}

function ownRows({ parts }: Mix): CautionRow[] {
  return parts.flatMap(({ item, grams }) =>
    item.cautionText === null || grams === 0
      ? []
      : [{ text: item.cautionText, because: item.name, source: item.source }],
  );
}

/** Says so when the main solute's curve is used colder than it has been checked. */
function extrapolationRows(mix: Mix): CautionRow[] {
  const pointC = freezingPointOfMix(mix);
  if (isProblem(pointC)) {
    return [
      {
        text: pointC.message.replace(/^grams: /, "Freezing point not answered: "),
        because: "the whole mix",
        source: sourceText(["rimeline"]),
      },
    ];
  }
  const [main] = [...mix.doses].sort((a, b) => b.moles - a.moles);
  if (main === undefined || pointC >= main.substance.checkedToC) return [];
  const text = `Extrapolated: the mix freezes at ${shownTemperature(pointC)} °C, and the curve of ${main.substance.name} has been checked down to ${shownTemperature(main.substance.checkedToC)} °C.`;
  return [{ text, because: main.substance.name, source: sourceText(["rimeline"]) }];
}

const GENERAL: readonly (readonly [string, SourceKey])[] = [
  ["Freezing kills neither bacteria nor viruses: what was unsafe before stays so.", "usdaFreezing"],
  ["What has thawed and stood warm is not frozen again.", "usdaFreezing"],
  ["A water activity computed here is no release of a shelf life.", "rimeline"],
  [
    "Very cold bars, metal and salted ice burn skin, lips and tongue: let them warm a little, and use gloves.",
    "commonPractice",
  ],
  [
    "Hard-frozen cubes and sticks can choke small children or hurt them when they fall.",
    "nhsChoking",
  ],
  [
    "Local food law, the label of each ingredient and licensed advice go before anything said here.",
    "commonPractice",
  ],
];

/** What to tell the eater and the cook about a mix; general rules last. */
export function cautionRows(mix: Mix): readonly CautionRow[] {
  return [
    ...keyedRows(mix),
    ...ownRows(mix),
    ...allergenRows(mix),
    ...solubilityRows(mix),
    ...extrapolationRows(mix),
    ...GENERAL.map(([text, key]) => ({ text, because: "every recipe", source: sourceText([key]) })),
  ];
}
