import { iceLineThetaMolPerKg } from "../engine/iceLine";
import { waterHeldKgPerMol } from "../engine/waterHeld";
import { bibliography, type SourceKey } from "../foundation/bibliography";
import { IDEAL_KF_K_KG_PER_MOL, WATER_MOLAR_MASS_KG_PER_MOL } from "../foundation/constants";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { freezingPointOfMix, iceFractionOfMix } from "./freezing";
import type { Dose, Mix, MixPart } from "./mix";
import { maxFreezeTemperatureC, solutionOf } from "./solution";
import { freezingPointUncertaintyK } from "./uncertainty";

/** One line on the board. `numbers` is the sum as one would type it; it gives `result` to the digits shown. */
export interface WorkingLine {
  readonly step: string;
  readonly formula: string;
  readonly numbers: string;
  readonly result: number | string;
  readonly unit: string;
  readonly source: string;
}

/** A number with the digits that a board can hold, and that still recompute. */
const shown = (value: number): string => String(Number(value.toPrecision(7)));

const line = (
  step: string,
  formula: string,
  numbers: string,
  result: number | string,
  unit: string,
  source: SourceKey,
): WorkingLine => ({ step, formula, numbers, result, unit, source: bibliography[source] });

function waterLine({ item, grams }: MixPart): WorkingLine {
  const { water, pieceWater } = item.content;
  const numbers = `${shown(grams)} × ${shown(water)}`;
  const pieces = pieceWater > 0 ? " (stays in pieces, none counts)" : "";
  const what = line(
    `water in ${item.name}${pieces}`,
    "g × share of water",
    numbers,
    grams * water,
    "g",
    "rimeline",
  );
  return { ...what, source: item.source };
}

const plus = (values: readonly number[]): string => values.map(shown).join(" + ");

function solutionLines(mix: Mix): WorkingLine[] {
  const { parts, doses, waterGrams } = mix;
  const counted = parts.filter(({ grams }) => grams > 0);
  const waters = counted.map(({ item, grams }) => grams * item.content.water);
  const kg = waterGrams / 1000;
  const molality = ({ moles, substance }: Dose) =>
    line(
      `molality of ${substance.name}`,
      "mol / kg of water",
      `${shown(moles)} / ${shown(kg)}`,
      moles / kg,
      "mol/kg",
      "openstaxChemistry2e",
    );
  const moles = ({ moles: amount, grams, substance }: Dose) =>
    line(
      `moles of ${substance.name}`,
      "g / molar mass",
      `${shown(grams)} / ${shown(substance.molarMassGPerMol)}`,
      amount,
      "mol",
      "ciaaw2021",
    );
  return [
    ...counted.map(waterLine),
    line("water in all", "sum", plus(waters), waterGrams, "g", "rimeline"),
    ...doses.map(moles),
    ...doses.map(molality),
  ];
}

function idealLines({ doses, waterGrams }: Mix): WorkingLine[] {
  const kg = waterGrams / 1000;
  const osmolality =
    doses.reduce((sum, { moles, substance }) => sum + moles * substance.particles, 0) / kg;
  const counts = doses.map(
    ({ moles, substance }) => `${shown(substance.particles)} × ${shown(moles / kg)}`,
  );
  return [
    line(
      "particles per kg of water",
      "Σ i × molality",
      counts.join(" + ") || "0",
      osmolality,
      "mol/kg",
      "openstaxChemistry2e",
    ),
    line(
      "depression by the ideal law",
      "Kf × particles",
      `${IDEAL_KF_K_KG_PER_MOL} × ${shown(osmolality)}`,
      IDEAL_KF_K_KG_PER_MOL * osmolality,
      "K",
      "openstaxChemistry2e",
    ),
  ];
}

/** Where ice and solution would be in balance at a temperature, and what each solute holds there. */
function heldLines({ doses }: Mix, temperatureC: number): { lines: WorkingLine[]; heldKg: number } {
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

function freezingLines(mix: Mix): WorkingLine[] {
  const pointC = freezingPointOfMix(mix);
  if (isProblem(pointC)) return neverLines(mix, pointC.message.replace(/^grams: /, ""));
  if (pointC === 0) {
    return [line("freezing point", "nothing is dissolved", "0", 0, "°C", "murphyKoop2005")];
  }
  const [, ideal] = idealLines(mix);
  const idealK = Number(ideal?.result ?? 0);
  const uncertaintyK = freezingPointUncertaintyK(mix);
  return [
    ...heldLines(mix, pointC).lines,
    line(
      "freezing point: there all the water is held",
      "θ such that Σ mol × w(θ) = water",
      shown(pointC),
      pointC,
      "°C",
      "stokesRobinson1966",
    ),
    line(
      "real less ideal depression",
      "solutes hold water, ions hold each other",
      `${shown(-pointC)} - ${shown(idealK)}`,
      -pointC - idealK,
      "K",
      "rimeline",
    ),
    ...(isProblem(uncertaintyK)
      ? []
      : [
          line(
            "one standard uncertainty",
            "curves, mixing rule and ingredients",
            shown(uncertaintyK),
            uncertaintyK,
            "K",
            "rimeline",
          ),
        ]),
  ];
}

/** Why no ice forms: what the solutes would hold at the end of freezing is more than all the water. */
function neverLines(mix: Mix, reason: string): WorkingLine[] {
  const lowestC = maxFreezeTemperatureC(mix);
  if (lowestC === null) return [line("freezing point", reason, "", "none", "", "rimeline")];
  const { lines, heldKg } = heldLines(mix, Math.max(lowestC, -100));
  return [
    line(
      "freezing would end (Tm′)",
      "mean by mass of what is dissolved",
      shown(lowestC),
      lowestC,
      "°C",
      "roos1993",
    ),
    ...lines,
    line(
      "held beyond the water there is, at Tm′",
      "held − water",
      `${shown(heldKg)} - ${shown(mix.waterGrams / 1000)}`,
      heldKg - mix.waterGrams / 1000,
      "kg",
      "rimeline",
    ),
    line("freezing point", reason, "", "none", "", "rimeline"),
  ];
}

function iceLines(mix: Mix, temperatureC: number): WorkingLine[] {
  const ice = iceFractionOfMix(mix, temperatureC, "water");
  if (isProblem(ice)) return [];
  const at = `${shown(temperatureC).replace("-", "−")} °C`;
  const lowestC = maxFreezeTemperatureC(mix);
  const effectiveC = lowestC === null ? temperatureC : Math.max(temperatureC, lowestC);
  const kg = mix.waterGrams / 1000;
  const share = mix.waterGrams / mix.totalGrams;
  const last = line(
    `ice at ${at}, share of the mix`,
    "share of the water × water / mix",
    `${shown(ice)} × ${shown(mix.waterGrams)} / ${shown(mix.totalGrams)}`,
    ice * share,
    "fraction",
    "rimeline",
  );
  if (ice === 0)
    return [
      line(`ice at ${at}, share of the water`, "none can form", "0", 0, "fraction", "rimeline"),
      last,
    ];
  const end =
    effectiveC > temperatureC
      ? [
          line(
            "freezing ends (Tm′): colder changes nothing",
            "mean by mass of what is dissolved",
            shown(effectiveC),
            effectiveC,
            "°C",
            "roos1993",
          ),
        ]
      : [];
  const { lines, heldKg } = heldLines(mix, effectiveC);
  return [
    ...end,
    ...lines,
    line(
      `ice at ${at}, share of the water`,
      "1 − held / water",
      `1 - ${shown(heldKg)} / ${shown(kg)}`,
      ice,
      "fraction",
      "stokesRobinson1966",
    ),
    last,
  ];
}

/** The calculation of a mix as one would write it on a board, for a temperature too when one is given. */
export function workingOf(mix: Mix, temperatureC: number | null): Result<readonly WorkingLine[]> {
  const solution = solutionOf(mix);
  if (isProblem(solution)) return solution;
  return [
    ...solutionLines(mix),
    ...idealLines(mix),
    ...freezingLines(mix),
    ...(temperatureC === null ? [] : iceLines(mix, temperatureC)),
  ];
}
