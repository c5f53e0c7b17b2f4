import { IDEAL_KF_K_KG_PER_MOL } from "../foundation/constants";
import type { Dose, Mix, MixPart } from "./mix";
import { line, plus, shown, type WorkingLine } from "./workingLine";

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

/** Water of each ingredient, moles and molality of what is dissolved. */
export function solutionLines(mix: Mix): WorkingLine[] {
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

/** What the ideal law makes of it. */
export function idealLines({ doses, waterGrams }: Mix): WorkingLine[] {
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
