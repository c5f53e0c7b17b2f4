import { iceLineThetaMolPerKg } from "../engine/iceLine";
import { waterHeldKgPerMol } from "../engine/waterHeld";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../foundation/constants";
import type { Mix } from "./mix";
import { line, plus, shown, type WorkingLine } from "./workingLine";

/** Where ice and solution would be in balance at a temperature, and what each solute holds there. */
export function heldLines(
  { doses }: Mix,
  temperatureC: number,
): { lines: WorkingLine[]; heldKg: number } {
  const theta = iceLineThetaMolPerKg(temperatureC);
  const activity = Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * theta);
  const at = `${shown(temperatureC).replace("-", "−")} °C`;
  const held = doses.map(({ moles, substance }) => ({
    name: substance.name,
    moles,
    perMole: waterHeldKgPerMol(substance.curve, theta, "freezing"),
  }));
  const heldKg = held.reduce((sum, { moles, perMole }) => sum + moles * perMole, 0);
  const lines = [
    line(
      `coldness θ of ice at ${at}`,
      "−ln(a_ice) / M_w",
      `-ln(${activity.toPrecision(9)}) / ${WATER_MOLAR_MASS_KG_PER_MOL}`,
      theta,
      "mol/kg",
      "murphyKoop2005",
    ),
    ...held.map(({ name, moles, perMole }) =>
      line(
        `water held liquid by ${name} at ${at}`,
        "mol × w(θ)",
        `${shown(moles)} × ${shown(perMole)}`,
        moles * perMole,
        "kg",
        "stokesRobinson1966",
      ),
    ),
    line(
      `water held liquid by all at ${at}`,
      "sum",
      plus(held.map(({ moles, perMole }) => moles * perMole)) || "0",
      heldKg,
      "kg",
      "stokesRobinson1966",
    ),
  ];
  return { lines, heldKg };
}
