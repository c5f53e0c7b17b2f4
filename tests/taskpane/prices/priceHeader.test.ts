import { perKgFactor } from "../../../taskpane/prices/priceHeader";

test.each([
  ["Price per kg", 1],
  ["€/kg", 1],
  ["Preis je kg", 1],
  ["Kosten pro 100 g", 10],
  ["Price of 100 g", 10],
  ["Price", null], // of what?
  ["Cost", null], // of the batch, perhaps
  ["Amount per kg", null],
  ["Price per piece", null],
])("the header “%s” makes its numbers prices of 1 kg by the factor %p", (header, factor) => {
  expect(perKgFactor(header)).toBe(factor);
});
