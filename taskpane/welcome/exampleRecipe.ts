import { NAMESPACE } from "../../src/worksheet/namespace";
import { localName } from "../bowl/localName";
import type { Contents } from "../host";
import { asText } from "../office/cellContent";
import type { Words } from "../words/words";

/** Made up for this purpose; RIME.CHECK says that it meets its target. */
const GRAMS: readonly (readonly [string, number])[] = [
  ["water", 580],
  ["sucrose", 190],
  ["lemon juice", 160],
  ["glucose monohydrate", 70],
];
const SERVED_AS = "scooped at −13";
const MIX = "A3:A6,B3:B6";

/** A recipe with its answers beneath, each by a formula; the recipe's head is in A2. */
export function exampleRecipe({ welcome: { example }, language }: Words): Contents {
  const call = (name: string, ...more: readonly string[]) =>
    `=${NAMESPACE}.${name}(${[MIX, ...more].join(",")})`;
  return [
    [example.title, ""],
    [example.ingredient, example.grams],
    ...GRAMS.map(([name, grams]) => [localName(name, language), grams]),
    ["", ""],
    [example.servedAs, asText(SERVED_AS)],
    [example.freezingPoint, call("FREEZINGPOINT")],
    [example.ice, call("ICEFRACTION", `${NAMESPACE}.TARGET(B8,"temperature")`)],
    [example.check, call("CHECK", "B8")],
    [example.working, ""],
    [call("WORKING"), ""],
  ];
}
