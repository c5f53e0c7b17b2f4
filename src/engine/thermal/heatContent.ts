import {
  integralTo,
  SUPERCOOLED_KJ_PER_KG_K,
  THERMAL_FIGURES,
  type FoodComponent,
} from "./foodComponent";

/** Mass fractions of a food at one temperature; they add up to 1. Frozen water is "ice". */
export type FoodShares = Readonly<Record<FoodComponent, number>>;

/** Latent heat of fusion of ice at 0 °C, kJ/kg (6.0095 kJ/mol). @source crc102 */
export const FUSION_KJ_PER_KG = 333.6;

const COMPONENTS = Object.keys(THERMAL_FIGURES) as readonly FoodComponent[];

/** Heat that a component takes up from 0 °C to a temperature, kJ/kg. */
function warmingKJPerKg(component: FoodComponent, temperatureC: number): number {
  const supercooled = component === "water" && temperatureC < 0;
  const capacity = supercooled
    ? SUPERCOOLED_KJ_PER_KG_K
    : THERMAL_FIGURES[component].heatCapacityKJPerKgK;
  return integralTo(capacity, temperatureC);
}

/**
 * Heat content of a food, kJ/kg, 0 when all is liquid at 0 °C: what each part takes up from 0 °C, less the heat
 * of fusion of what is ice. A function of state, so the latent heat falls with temperature by itself (about
 * 313 kJ/kg at −10 °C). Heats of mixing are left out.
 * @source choiOkos1986; crc102 for the heat of fusion
 */
export function heatContentKJPerKg(shares: FoodShares, temperatureC: number): number {
  return COMPONENTS.reduce((sum, component) => {
    const latent = component === "ice" ? FUSION_KJ_PER_KG : 0;
    return sum + shares[component] * (warmingKJPerKg(component, temperatureC) - latent);
  }, 0);
}
