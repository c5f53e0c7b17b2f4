/** A word for how something gives way, up to a limit of the measure its scale goes by. */
export interface TextureStep {
  readonly below: number;
  readonly word: string;
}

/** Less ice of the mix than this is not felt: the scale without ice is used. Common practice. */
export const LEAST_ICE_FELT_FRACTION = 0.02;

/**
 * By how many decades of viscosity a mix would seem thicker if all of it were ice. With the limits below set so
 * that textbook mixes at their serving temperatures get the word that the trade has for them: common practice.
 */
export const ICE_DECADES = 5;

/** With ice, by firmness: decade of the unfrozen phase's viscosity (Pa·s) + ICE_DECADES × share of ice in the mix. */
export const WITH_ICE: readonly TextureStep[] = [
  { below: 1.5, word: "pours" }, // a slush of 15 % sugar at −1.5 °C has 1.0
  { below: 2.9, word: "spoons" }, // granita at −2 and −3: 2.4, 1.9; soft ice at −6: 2.4
  { below: 4.2, word: "scoops" }, // parfait and gelato at −12: 3.0, 3.3; ice cream at −13: 3.7; sorbet at −12: 4.0
  { below: 6.5, word: "bites" }, // ice cream at −18 and −25: 4.7, 6.2; ice pop of 15 % sugar at −18: 6.2
  { below: Infinity, word: "rock-hard" }, // water with 5 % sugar at −18: 7.0
];

/** Without ice, by the decade of the viscosity (Pa·s): common practice. */
export const WITHOUT_ICE: readonly TextureStep[] = [
  { below: 1, word: "flows" }, // syrup of 65 % sugar at 20 °C: 0.3
  { below: 3, word: "squeezes" }, // honey at 20 °C: 1.9
  { below: 7, word: "pulls" }, // honey at −18 °C: 5.2; caramel of 10 % water at 20 °C: 6.8
  { below: 10, word: "cuts" }, // glucose syrup DE 42 at −18 °C: 8.4
  { below: Infinity, word: "snaps" }, // boiled sugar with 2 % water at 20 °C: a glass
];

/** The word of a scale for a measure. */
export const textureWord = (scale: readonly TextureStep[], measure: number): string =>
  (scale.find(({ below }) => measure < below) ?? scale.at(-1))?.word ?? "";
