import { catalogueName } from "../../src/audit/catalogueName";

const OWN = [
  ["Name", "Same as", "Water"],
  ["orchard honey", "honey", null],
  ["plum puree", null, 80],
];
const EIGENE = [
  ["Name", "wie", "Wasser"],
  ["Waldhonig vom Hof", "Honig", null],
];

test("an own ingredient is known as it is spelled and by its words", () => {
  expect(catalogueName("Orchard honey", OWN)).toBe("honey");
  expect(catalogueName("honey, orchard", OWN)).toBe("honey");
  expect(catalogueName("Puree of plums", OWN)).toBeNull();
});

test("German headers are read as the functions read them", () => {
  expect(catalogueName("Waldhonig vom Hof", EIGENE)).toBe("Honig");
});

test("what the catalogue has by that name, or nobody, is itself", () => {
  expect(catalogueName("honey", OWN)).toBe("honey");
  expect(catalogueName("whole milk", OWN)).toBe("whole milk");
  expect(catalogueName("something else", null)).toBe("something else");
});
