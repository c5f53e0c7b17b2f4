import type { ComparedFigure, Comparison } from "./comparison";

/** What we set out to reach against figures that no fit has read, and where it stands. */
export interface Target {
  readonly name: string;
  readonly rms: number;
  readonly largest: number | null;
  readonly figures: readonly ComparedFigure[];
}

/** The project's own limits, decided before the residuals were looked at; K, or a_w for the last two. */
export function targetsOf(comparisons: readonly Comparison[]): readonly Target[] {
  const heldOf = (keep: (comparison: Comparison) => boolean) =>
    comparisons
      .filter((each) => each.use === "held out" && keep(each))
      .flatMap(({ figures }) => figures);
  const single = (...names: readonly string[]) =>
    heldOf(({ id }) => id.startsWith("freezing-")).filter(({ group }) => names.includes(group));
  const only = (...ids: readonly string[]) =>
    heldOf(({ id }) => ids.some((each) => id.startsWith(each)));
  const toC = (coldest: number, figures: readonly ComparedFigure[]) =>
    figures.filter(({ printed }) => printed >= coldest);
  const eutectic = (name: string) => only("eutectics").filter(({ group }) => group === name);
  const mixtureNamed = (word: RegExp) =>
    heldOf(({ id, source }) => id.startsWith("mixture-") && word.test(source));
  return [
    { name: "sucrose, dairy table", rms: 0.12, largest: null, figures: only("dairy-sucrose") },
    { name: "sucrose, eutectic", rms: 0.3, largest: null, figures: eutectic("sucrose") },
    { name: "glucose, eutectic", rms: 0.15, largest: null, figures: eutectic("glucose") },
    { name: "fructose, eutectic", rms: 0.8, largest: null, figures: eutectic("fructose") },
    {
      name: "sodium chloride, cryoscope and osmometer standards",
      rms: 0.004,
      largest: 0.006,
      figures: only("cryoscope", "osmometer"),
    },
    {
      name: "sodium and potassium chloride to their eutectics",
      rms: 0.1,
      largest: 0.3,
      figures: single("sodium chloride", "potassium chloride"),
    },
    {
      name: "calcium and magnesium chloride",
      rms: 0.35,
      largest: 1.5,
      figures: single("calcium chloride", "magnesium chloride"),
    },
    { name: "glycerol to −40 °C", rms: 0.3, largest: 1.7, figures: toC(-40, single("glycerol")) },
    {
      name: "propylene glycol to −40 °C",
      rms: 0.2,
      largest: 1.7,
      figures: toC(-40, single("propylene glycol")),
    },
    { name: "ethanol to −40 °C", rms: 0.4, largest: 1.7, figures: toC(-40, single("ethanol")) },
    {
      name: "sodium with potassium chloride",
      rms: 0.05,
      largest: 0.15,
      figures: mixtureNamed(/sodium chloride with potassium chloride/),
    },
    {
      name: "seawater and its brine to 12 % salt",
      rms: 0.05,
      largest: 0.15,
      figures: mixtureNamed(/seawater/),
    },
    { name: "ice-cream mixes", rms: 0.1, largest: 0.15, figures: only("ice-cream") },
    { name: "fruit", rms: 0.12, largest: 0.2, figures: only("fruit") },
    { name: "honey, a_w at 15 to 21 % water", rms: 0.02, largest: 0.03, figures: only("honey") },
    { name: "boiling of 65.46 % sucrose", rms: 0.4, largest: null, figures: only("boiling") },
  ];
}
