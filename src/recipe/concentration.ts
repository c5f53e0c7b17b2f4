import type { Solute } from "../catalogue/solute";
import { outsideValidity } from "../foundation/problem";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../foundation/constants";
import { rootBetween } from "../engine/rootBetween";
import { sucroseGramsPerMl } from "./density";

export const SCALES = [
  ...([
    "mass fraction",
    "molality",
    "g per 100 g water",
    "mole fraction",
    "Brix",
    "Baume",
  ] as const),
];
export type Scale = (typeof SCALES)[number];

/** Density of water at 20 °C, g/mL, and the modulus of the American Baumé scale. @source nbsC440 */
const WATER_G_PER_ML = 0.99823;
const MODULUS = 145;

const baumeOf = (massFraction: number): number =>
  MODULUS - (MODULUS * WATER_G_PER_ML) / sucroseGramsPerMl(massFraction);

/** What makes a scale inapplicable to a solute, or null. */
function refusal(solute: Solute, scale: Scale, argument: string) {
  const onlySucrose = scale === "Brix" || scale === "Baume";
  return onlySucrose && solute.name !== "sucrose"
    ? outsideValidity(
        `${argument}: "${scale}" is a scale of sucrose only, and the solute is "${solute.name}"; another scale is expected.`,
      )
    : null;
}

/** Mass fraction, 0 up to less than 1, from a value on a scale. */
function toMassFraction(solute: Solute, value: number, scale: Scale): Result<number> {
  const molarMassKg = solute.molarMass.value / 1000;
  switch (scale) {
    case "mass fraction":
      return value < 1 ? value : beyond(value, scale, "less than 1");
    case "Brix":
      return value < 100 ? value / 100 : beyond(value, scale, "less than 100");
    case "molality":
      return (value * molarMassKg) / (1 + value * molarMassKg);
    case "g per 100 g water":
      return value / (100 + value);
    case "mole fraction": {
      if (!(value < 1)) return beyond(value, scale, "less than 1");
      const soluteKg = value * molarMassKg;
      return soluteKg / (soluteKg + (1 - value) * WATER_MOLAR_MASS_KG_PER_MOL);
    }
    case "Baume":
      return (
        rootBetween((fraction) => baumeOf(fraction) - value, 0, MOST_SUCROSE) ??
        beyond(value, scale, `from ${baumeOf(0).toFixed(2)} to ${baumeOf(MOST_SUCROSE).toFixed(1)}`)
      );
  }
}

const MOST_SUCROSE = 0.84;

const beyond = (value: number, scale: Scale, limit: string) =>
  outsideValidity(`value: ${value} is not answered as "${scale}"; it must be ${limit}.`);

function fromMassFraction(solute: Solute, fraction: number, scale: Scale): Result<number> {
  const molarMassKg = solute.molarMass.value / 1000;
  const perWater = fraction / (1 - fraction);
  switch (scale) {
    case "mass fraction":
      return fraction;
    case "Brix":
      return 100 * fraction;
    case "molality":
      return perWater / molarMassKg;
    case "g per 100 g water":
      return 100 * perWater;
    case "mole fraction": {
      const moles = perWater / molarMassKg;
      return moles / (moles + 1 / WATER_MOLAR_MASS_KG_PER_MOL);
    }
    case "Baume":
      return fraction <= MOST_SUCROSE
        ? baumeOf(fraction)
        : outsideValidity(
            `value: ${(100 * fraction).toFixed(1)} % of sucrose is not answered in Baume; at most ${100 * MOST_SUCROSE} % is.`,
          );
  }
}

/** Turns a concentration of one solute in water from one scale into another. Grams are of the solute as named. */
export function convertConcentration(
  solute: Solute,
  value: number,
  from: Scale,
  to: Scale,
): Result<number> {
  const wrong = refusal(solute, from, "from") ?? refusal(solute, to, "to");
  if (wrong !== null) return wrong;
  const fraction = toMassFraction(solute, value, from);
  return isProblem(fraction) ? fraction : fromMassFraction(solute, fraction, to);
}
