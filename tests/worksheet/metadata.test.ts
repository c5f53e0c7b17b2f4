import { worksheetFunctions } from "../../src/worksheet/functions";
import { functionMetadata } from "../../src/worksheet/metadata";

const { functions } = functionMetadata();

test("every function of the list is in the metadata, once", () => {
  expect(functions.map(({ id }) => id)).toEqual(worksheetFunctions.map(({ name }) => name));
  expect(new Set(functions.map(({ id }) => id)).size).toBe(functions.length);
});

// Rules of the host: letter first, at least 3 characters, A-Z, 0-9 and ".", and not a cell's address.
test("names keep to the host's rules", () => {
  for (const { id } of functions) {
    expect(id).toMatch(/^[A-Z][A-Z0-9.]{2,}$/);
    expect(id).not.toMatch(/^[A-Z]{1,3}\d+$/);
  }
});

test("everything is described, and no required argument follows an optional one", () => {
  for (const { description, parameters, helpUrl } of functions) {
    expect(description.length).toBeGreaterThan(10);
    expect(helpUrl).toMatch(/\/help\/[a-z]+\.html$/);
    const optional = parameters.map((parameter) => "optional" in parameter);
    expect(optional).toEqual([...optional].sort());
    for (const parameter of parameters) expect(parameter.description.length).toBeGreaterThan(5);
  }
});
