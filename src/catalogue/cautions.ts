import type { SourceKey } from "../foundation/bibliography";
import type { CautionKey } from "./ingredient";

/** A sentence for the eater and the cook, and on whose word. Local codes and licensed advice go before it. */
export interface Caution {
  readonly text: string;
  readonly sources: readonly SourceKey[];
}

/** What is said for each caution an ingredient carries. */
export const cautions: Readonly<Record<CautionKey, Caution>> = {
  "honey and infants": {
    text: "Contains honey: not for children under 12 months (infant botulism); freezing and cooking do not make it safe.",
    sources: ["cdcInfantBotulism"],
  },
  "raw egg": {
    text: "Contains raw egg: use pasteurised egg or heat the mix to 71 °C (160 °F), above all for children, in pregnancy, for the old and the ill.",
    sources: ["fdaEggSafety"],
  },
  "raw milk": {
    text: "Contains raw milk: pasteurise it; freezing does not kill its germs.",
    sources: ["cdcRawMilk"],
  },
  "raw flour": {
    text: "Contains raw flour: bake or heat-treat it first; freezing does not kill its germs.",
    sources: ["fdaFlour"],
  },
  alcohol: {
    text: "Contains alcohol: not for children, in pregnancy, for those who drive or must not drink; freezing does not remove it, and sale may need a licence.",
    sources: ["cdcAlcohol"],
  },
  "glycerol and children": {
    text: "Contains glycerol: not for children under 7, and sparingly for children up to 10 (low blood sugar, drowsiness, after slush drinks).",
    sources: ["fsaGlycerol"],
  },
  "propylene glycol": {
    text: "Contains propylene glycol: a carrier of flavours, limited to 2.5 % of frozen dairy sweets in the US; not a means to soften ice.",
    sources: ["cfr184_1666"],
  },
  "whole nuts and choking": {
    text: "Contains whole or coarse nuts: not for children under 5, who may choke on them; grind them or use a paste.",
    sources: ["nhsChoking"],
  },
  "laxative polyols": {
    text: "Contains sugar alcohols: above 10 % of the food, excessive consumption may produce laxative effects.",
    sources: ["eu1169_2011"],
  },
  "xylitol and dogs": {
    text: "Contains xylitol, which is poisonous to dogs, even a little of it.",
    sources: ["fdaXylitolDogs"],
  },
  "not food": {
    text: "Not a food: for the class-room only, never in anything that is eaten.",
    sources: ["commonPractice"],
  },
};
