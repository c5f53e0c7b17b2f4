import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { gramsOfSubstance } from "./amounts";
import { iceFractionOfMix } from "./freezing";
import type { Mix } from "./mix";

/** A part of a mix with its share by mass. */
interface ThermalPart {
  readonly share: number;
  readonly kind: keyof typeof HEAT_KJ_PER_KG_K;
}

/**
 * Specific heats near −10 °C, kJ/(kg·K); ethanol from memory.
 * @source choiOkos1986
 */
const HEAT_KJ_PER_KG_K = {
  water: 4.18,
  ice: 2.06,
  protein: 1.996,
  fat: 1.969,
  carbohydrate: 1.529,
  fibre: 1.827,
  ash: 1.073,
  ethanol: 2.3,
} as const;

/** Thermal conductivities, W/(m·K), and densities, kg/m³, near −10 °C. @source choiOkos1986 */
const CONDUCTIVITY_W_PER_M_K = {
  water: 0.553,
  ice: 2.292,
  protein: 0.167,
  fat: 0.183,
  carbohydrate: 0.187,
  fibre: 0.17,
  ash: 0.315,
  ethanol: 0.18,
} as const;
const DENSITY_KG_PER_M3 = {
  water: 997,
  ice: 918,
  protein: 1335,
  fat: 930,
  carbohydrate: 1602,
  fibre: 1315,
  ash: 2427,
  ethanol: 800,
} as const;

/** Latent heat of fusion of ice at 0 °C, kJ/kg. @source crc102 (6.0095 kJ/mol) */
const FUSION_KJ_PER_KG = 333.6;

function thermalParts(mix: Mix, iceOfWater: number): readonly ThermalPart[] {
  const { totalGrams, waterGrams, doses } = mix;
  const ethanol = gramsOfSubstance(mix, "ethanol");
  const dissolved = doses.reduce((sum, { grams }) => sum + grams, 0) - ethanol;
  const ice = iceOfWater * waterGrams;
  const grams = {
    water: waterGrams - ice + mix.pieceWaterGrams,
    ice,
    protein: mix.proteinGrams,
    fat: mix.fatGrams,
    carbohydrate: dissolved,
    fibre: mix.inertGrams - mix.pieceWaterGrams,
    ash: mix.ashGrams,
    ethanol,
  };
  return (Object.keys(grams) as (keyof typeof grams)[]).map((kind) => ({
    kind,
    share: grams[kind] / totalGrams,
  }));
}

/** Enthalpy of a mix, kJ/kg, 0 when liquid at 0 °C; by this project's own share of ice. */
export function enthalpyKJPerKg(mix: Mix, temperatureC: number): Result<number> {
  const ice = iceFractionOfMix(mix, temperatureC, "water");
  if (isProblem(ice)) return ice;
  return thermalParts(mix, ice).reduce(
    (sum, { kind, share }) =>
      sum +
      share * (HEAT_KJ_PER_KG_K[kind] * temperatureC - (kind === "ice" ? FUSION_KJ_PER_KG : 0)),
    0,
  );
}

export interface Conduction {
  readonly conductivityWPerMK: number;
  readonly densityKgPerM3: number;
}

/** Conductivity (geometric mean by volume) and density of a mix at a temperature. */
export function conductionOf(mix: Mix, temperatureC: number): Result<Conduction> {
  const ice = iceFractionOfMix(mix, temperatureC, "water");
  if (isProblem(ice)) return ice;
  const volumes = thermalParts(mix, ice).map(({ kind, share }) => ({
    kind,
    volume: share / DENSITY_KG_PER_M3[kind],
  }));
  const total = volumes.reduce((sum, { volume }) => sum + volume, 0);
  const logMean = volumes.reduce(
    (sum, { kind, volume }) => sum + (volume / total) * Math.log(CONDUCTIVITY_W_PER_M_K[kind]),
    0,
  );
  return { conductivityWPerMK: Math.exp(logMean), densityKgPerM3: 1 / total };
}
