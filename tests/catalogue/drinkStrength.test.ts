import { ingredients } from "../../src/catalogue/ingredients";

/**
 * g of ethanol in 1 mL of it at 20 °C (OIML R 22, 1975, table of aqueous ethanol at 100 % by volume). Strength by
 * volume is the volume of ethanol in 100 volumes of the drink, whatever else is dissolved in it.
 */
const ETHANOL_G_PER_ML = 0.78924;

// Flavours are left out: the strength of an extract is a legal minimum.
const drinks = ingredients.filter(
  ({ group, abvPercent, gramsPerMl }) =>
    group === "alcohol" && abvPercent !== undefined && gramsPerMl !== undefined,
);

test("drinks with a strength and a density are in the catalogue", () => {
  expect(drinks.length).toBeGreaterThanOrEqual(10);
});

test.each(drinks.map((drink) => [drink.name, drink] as const))(
  "%s holds the alcohol that its strength and density say",
  (_name, { abvPercent, gramsPerMl, composition, spread }) => {
    const { value, relativeSpread } = gramsPerMl!;
    const bySourceGrams = composition.solutes!["ethanol"]!;
    const byStrengthGrams = (abvPercent! * ETHANOL_G_PER_ML) / value;
    const allowed = Math.hypot(spread["ethanol"]!, byStrengthGrams * relativeSpread);
    expect(Math.abs(bySourceGrams - byStrengthGrams)).toBeLessThanOrEqual(allowed);
  },
);
