import { freezingTables } from "../../../src/catalogue/fit/points";
import { bibliography } from "../../../src/foundation/bibliography";
import { seawaterGrams } from "../../published/mixtures";
import { REFERENCE_SALINITY_G_PER_KG, seawaterBrine } from "../../published/seawater";
import { shareFigure } from "./cellFigures";
import { comparisonOf, type Comparison } from "./comparison";
import { shortSource } from "./shortSource";

const LEVER =
  "By the lever rule: at each printed freezing point the brine left over has the printed strength.";
const BRINE_PERCENT = 3.5;

/** Share of the water of a 3.5 % brine that is ice when what is left has the printed strength, %. */
const frozenPercent = (percent: number): number =>
  100 * (1 - (BRINE_PERCENT * (100 - percent)) / percent / (100 - BRINE_PERCENT));

function saltBrine(): Comparison[] {
  const tables = freezingTables.filter(
    ({ solute, use }) => solute === "sodium chloride" && use === "held out",
  );
  return tables.map(({ source, massPercent, freezingPointC }) => {
    const cold = massPercent.flatMap((percent, row) =>
      percent > BRINE_PERCENT ? [{ percent, atC: freezingPointC[row]! }] : [],
    );
    return comparisonOf(
      {
        id: `share-${source}`,
        title: `Water frozen out of 3.5 % sodium chloride: ${shortSource(source)}`,
        source: bibliography[source],
        use: "held out",
        quantity: "share",
        note: LEVER,
      },
      cold.map(({ percent, atC }) =>
        shareFigure(
          {
            label: `at ${atC} °C`.replace("-", "−"),
            group: "sodium chloride",
            grams: { water: 100 - BRINE_PERCENT, "sodium chloride": BRINE_PERCENT },
            printed: frozenPercent(percent),
          },
          atC,
        ),
      ),
    );
  });
}

const waterPerSalt = (salinity: number): number => (1000 - salinity) / salinity;

const seawater = (): Comparison =>
  comparisonOf(
    {
      id: "share-seawater",
      title: "Water frozen out of seawater",
      source: bibliography.teos10,
      use: "held out",
      quantity: "share",
      note: LEVER,
    },
    seawaterBrine
      .filter(([salinity]) => salinity > REFERENCE_SALINITY_G_PER_KG)
      .map(([salinity, atC]) =>
        shareFigure(
          {
            label: `at ${atC} °C`.replace("-", "−"),
            group: "seawater",
            grams: seawaterGrams(REFERENCE_SALINITY_G_PER_KG, REFERENCE_SALINITY_G_PER_KG),
            printed: 100 * (1 - waterPerSalt(salinity) / waterPerSalt(REFERENCE_SALINITY_G_PER_KG)),
          },
          atC,
        ),
      ),
  );

/** Shares of water frozen. */
export const shares = (): Comparison[] => [...saltBrine(), seawater()];
