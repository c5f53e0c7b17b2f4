import { defineSolute, type Solute } from "./solute";
import { molarMassOf } from "./molarMassOf";

/**
 * A hydrate as it is sold: the same curve per mole as the anhydrous substance, a larger molar mass, and
 * water of crystallisation that joins the water of the mix. Sweetness is counted per gram as sold.
 */
export function hydrateOf(
  parent: Solute,
  waters: number,
  own: Pick<Solute, "name" | "cas" | "aliases">,
): Solute {
  const formula = `${parent.formula}·${waters === 1 ? "" : waters}H2O`;
  const molarMass = molarMassOf(formula);
  const drySolids = parent.molarMass.value / molarMass.value;
  const { name, aliases, cas } = own;
  const { kind, food, vantHoff, curve, curveRecord, sweetness } = parent;
  return defineSolute({
    ...{ name, aliases, formula, cas, kind, food, molarMass, vantHoff, curve, curveRecord },
    hydrateOf: { solute: parent.name, waterMassFraction: 1 - drySolids },
    ...(sweetness && { sweetness: { ...sweetness, value: sweetness.value * drySolids } }),
    note: `Gives ${(100 * drySolids).toFixed(1)} % ${parent.name} and ${(100 - 100 * drySolids).toFixed(1)} % water.`,
  });
}
