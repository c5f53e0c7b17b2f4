import { gramsOfSubstance } from "./amounts";
import { sourceText, type CautionRow } from "./cautionRow";
import type { Mix } from "./mix";

/** Lactose in the water of a mix above which it is felt as sand in storage. Common practice, no source. */
const SANDY_LACTOSE_PER_100 = 9.6;

/** What may fall out of solution: sandy lactose, and more than dissolves at 20 °C. */
export function solubilityRows(mix: Mix): CautionRow[] {
  const per100 = (grams: number) => (100 * grams) / mix.waterGrams;
  const lactose = per100(gramsOfSubstance(mix, "lactose"));
  const sandy: CautionRow[] =
    lactose > SANDY_LACTOSE_PER_100
      ? [
          {
            text: `Lactose may crystallise and feel sandy in storage: ${lactose.toFixed(1)} g per 100 g of water, and up to ${SANDY_LACTOSE_PER_100} is usual.`,
            because: "lactose",
            source: sourceText(["commonPractice"]),
          },
        ]
      : [];
  const tooMuch = mix.doses.flatMap(({ substance, grams }): CautionRow[] => {
    const figure = substance.solute?.solubility20;
    if (figure === undefined || per100(grams) <= figure.value) return [];
    const text = `More ${substance.name} than dissolves at 20 °C: ${per100(grams).toFixed(0)} g per 100 g of water, and ${figure.value} dissolve.`;
    return [{ text, because: substance.name, source: sourceText([figure.source]) }];
  });
  return mix.waterGrams > 0 ? [...sandy, ...tooMuch] : [];
}
