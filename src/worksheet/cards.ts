import { bibliography } from "../foundation/bibliography";
import type { Figure } from "../foundation/figure";
import { isProblem } from "../foundation/problem";
import type { Solute } from "../catalogue/solute";
import { allergenWords } from "../recipe/allergenWords";
import { wholeItem } from "../recipe/catalogueItem";
import { cautionWords } from "../recipe/cautionWords";
import { compositionOf } from "../recipe/components";
import type { Item } from "../recipe/item";
import { mixOfItem } from "../recipe/mixOf";
import type { Card, CardRow } from "./card";

const row = (label: string, value: number | string | undefined): readonly CardRow[] =>
  value === undefined || value === "" ? [] : [{ label, value }];

const figure = (label: string, known: Figure | undefined): readonly CardRow[] =>
  known === undefined
    ? []
    : [
        ...row(known.unit === "1" ? label : `${label}, ${known.unit}`, known.value),
        ...row(`${label}, ±`, known.uncertainty > 0 ? known.uncertainty : undefined),
      ];

/** What the catalogue knows of a solute, with uncertainties and sources. */
export const soluteCard = (solute: Solute): Card => ({
  title: solute.name,
  rows: [
    ...row("formula", solute.formula),
    ...row("food", solute.food ? "yes" : "no"),
    ...figure("molar mass", solute.molarMass),
    ...row("van 't Hoff factor", solute.vantHoff.value),
    ...figure("eutectic", solute.eutecticTemperature),
    ...figure("solubility at 20 °C", solute.solubility20),
    ...figure("sweetness, sucrose = 1", solute.sweetness),
    ...figure("Tm′", solute.maxFreezeTemperature),
    ...row("freezing curve checked to, °C", solute.curveRecord.checkedToC),
    ...row("freezing curve, ± share of the depression", solute.curveRecord.relativeUncertainty),
    ...row("source", solute.curveRecord.source.map((key) => bibliography[key]).join("; ")),
    ...row("note", solute.note),
  ],
});

/** What 100 g of an ingredient hold, and what is to be known of it. */
export function ingredientCard(item: Item): Card {
  const mix = mixOfItem(wholeItem(item), 100);
  const parts = isProblem(mix) ? [] : compositionOf(mix);
  const spread = item.spread["water"];
  return {
    title: item.name,
    rows: [
      ...parts.flatMap(({ name, grams }) => row(`${name}, g per 100 g`, grams)),
      ...row("water, ± g per 100 g", spread === undefined ? undefined : 100 * spread),
      ...row("g per mL", item.facts.gramsPerMl?.value),
      ...row("g per piece", item.facts.gramsPerPiece?.value),
      ...row("allergens", allergenWords(item)),
      ...row("cautions", cautionWords(item)),
      ...row("source", item.source),
      ...row("note", item.assumptions.join("; ")),
    ],
  };
}
