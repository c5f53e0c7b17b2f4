import { solutes } from "../../src/catalogue/solutes";
import { freezingPointC } from "../../src/engine/freezingPoint";
import { solutionThetaMolPerKg } from "../../src/engine/solutionTheta";

const depressionK = (curve: (typeof solutes)[number]["curve"], molality: number) =>
  -(freezingPointC({ waterKg: 1, solutes: [{ moles: molality, curve }] }) as number);

describe("at 0.001 mol/kg", () => {
  const neutral = solutes.filter(({ vantHoff, kind }) => vantHoff.value === 1 && kind !== "lumped");

  test.each(neutral.map((solute) => [solute.name, solute] as const))(
    "%s lowers the freezing point by 1.860 K·kg/mol (USP <785>) within 0.5 %%",
    (_, { curve }) => {
      expect(Math.abs(depressionK(curve, 0.001) / 1.86e-3 - 1)).toBeLessThan(0.005);
    },
  );

  /** Valences of the ions, for the limiting law φ = 1 − A·|z₊z₋|·√I with A = 0.3767 at 0 °C. */
  const salts: Record<string, readonly [product: number, strengthPerMol: number]> = {
    "sodium chloride": [1, 1],
    "potassium chloride": [1, 1],
    "calcium chloride": [2, 3],
    "magnesium chloride": [2, 3],
    "sodium bicarbonate": [1, 1],
    "sodium sulfate": [2, 3],
    "ammonium chloride": [1, 1],
    "sodium acetate": [1, 1],
  };

  test.each(Object.entries(salts))(
    "%s follows the Debye–Hückel limiting law (Archer & Wang 1990) within 1 %%",
    (name, [product, strengthPerMol]) => {
      const { curve, vantHoff } = solutes.find((solute) => solute.name === name)!;
      const molality = 0.001;
      const limiting = 1 - 0.3767 * product * Math.sqrt(strengthPerMol * molality);
      const theta = solutionThetaMolPerKg(
        { waterKg: 1, solutes: [{ moles: molality, curve }] },
        "freezing",
      );
      const osmoticCoefficient = theta / (vantHoff.value * molality);
      expect(Math.abs(osmoticCoefficient / limiting - 1)).toBeLessThan(0.01);
    },
  );
});
