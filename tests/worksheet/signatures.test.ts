import { worksheetFunctions } from "../../src/worksheet/functions";

// What users have in their cells: names, order of arguments and which may be left out never change. New
// arguments go at the end.
const SIGNATURES = `
MOLES(solute, grams)
MOLALITY(solute, soluteGrams, waterGrams)
MASSFRACTION(soluteGrams, solventGrams)
CONCENTRATION(solute, value, from, to)
ABVTOMASSFRACTION(abvPercent)
GRAMS(item, amount, unit, [ownIngredients])
IDEALDEPRESSION(molality, [vantHoff], [kf])
IDEALELEVATION(molality, [vantHoff], [kb])
MOLARMASSFROM(depression, soluteGrams, waterGrams, [vantHoff], [kf])
FREEZINGPOINT(items, grams, [ownIngredients])
DEPRESSION(items, grams, [ownIngredients])
ICEFRACTION(items, grams, temperature, [basis], [ownIngredients])
ICETEMPERATURE(items, grams, iceFraction, [basis], [ownIngredients])
UNFROZENSOLIDS(items, grams, temperature, [ownIngredients])
FREEZINGCURVE(items, grams, [from], [to], [steps], [ownIngredients])
GLASSTRANSITION(items, grams, [ownIngredients])
MAXFREEZECONCENTRATED(items, grams, [ownIngredients])
TEXTURE(items, grams, temperature, [ownIngredients])
FREEZINGTIME(items, grams, thicknessMm, airTemperature, [startTemperature], [coreTemperature], [airflow], [shape], [ownIngredients])
WATERACTIVITY(items, grams, [temperature], [ownIngredients])
BOILINGPOINT(items, grams, [pressure], [ownIngredients])
OSMOTICPRESSURE(items, grams, [temperature], [ownIngredients])
OSMOLALITY(items, grams, [ownIngredients])
DENSITY(items, grams, [overrunFraction], [ownIngredients])
BRIX(items, grams, [ownIngredients])
SWEETNESS(items, grams, [ownIngredients])
COMPONENT(items, grams, component, [ownIngredients])
COMPOSITION(items, grams, [ownIngredients])
SOLUTE(name, property)
INGREDIENT(name, component)
SOLUTES([search])
INGREDIENTS([search])
TARGET(name, property)
AMOUNTFOR(items, grams, item, quantity, value, [temperature], [ownIngredients], [replacing], [hold])
CHECK(items, grams, target, [ownIngredients])
UNCERTAINTY(items, grams, quantity, [temperature], [ownIngredients])
WORKING(items, grams, [temperature], [ownIngredients])
CAUTIONS(items, grams, [ownIngredients])
`;

test("no name, argument or order has changed", () => {
  const found = worksheetFunctions.map(({ name, parameters }) => {
    const inside = parameters.map((one) => (one.optional ? `[${one.name}]` : one.name));
    return `${name}(${inside.join(", ")})`;
  });
  expect([...found].sort()).toEqual(SIGNATURES.trim().split("\n").sort());
});

test("every function says how it is computed or is a list, and see-also names exist", () => {
  const names = new Set(worksheetFunctions.map(({ name }) => name));
  for (const { name, method, seeAlso = [], summary, sources } of worksheetFunctions) {
    const isList = name === "SOLUTES" || name === "INGREDIENTS";
    expect([name, isList || (method ?? "").length > 15]).toEqual([name, true]);
    expect(summary.endsWith(".")).toBe(true);
    expect(sources.length).toBeGreaterThan(0);
    expect(seeAlso.filter((other) => !names.has(other))).toEqual([]);
  }
});
