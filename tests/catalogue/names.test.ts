import { findItem } from "../../src/catalogue/findItem";
import { callFunction } from "../../src/worksheet/callFunction";
import { namePhrases } from "./namePhrases";

/** So many of a hundred names are read as meant; others are asked back or unknown, with the nearest name. */
const READ_OF_HUNDRED = 90;

const { unknown = [], "not an ingredient": others = [], ambiguous = [], ...entries } = namePhrases;
const meant = Object.entries(entries).flatMap(([entry, names]) =>
  names.map((name) => ({ entry, name })),
);

const nameRead = (name: string): string | null => {
  const match = findItem(name);
  if (match.kind === "solute") return match.solute.name;
  return match.kind === "ingredient" ? match.ingredient.name : null;
};

const numberFrom = (name: string, ...given: unknown[]): number =>
  Number(callFunction(name, ...given)[0]?.[0]);

/** Fine salt and table salt are one thing to a mix: the same freezing point and water within a hundredth. */
function isSame(one: string, other: string): boolean {
  const figures = [one, other].map((name) => [
    numberFrom("FREEZINGPOINT", [["water"], [name]], [[100], [20]]),
    100 - numberFrom("COMPONENT", name, 100, "water"),
  ]);
  const [first = [], second = []] = figures;
  return first.every(
    (figure, at) => Math.abs(figure - (second[at] ?? NaN)) <= 0.01 * Math.abs(figure),
  );
}

test("names as people write them are read as meant, by and large", () => {
  const right = meant.filter(({ entry, name }) => {
    const read = nameRead(name);
    return read !== null && isSame(read, entry);
  });
  expect((100 * right.length) / meant.length).toBeGreaterThan(READ_OF_HUNDRED);
});

test("none is read as another thing", () => {
  const wrong = meant.flatMap(({ entry, name }) => {
    const read = nameRead(name);
    return read === null || isSame(read, entry) ? [] : [`${name}: ${read}, not ${entry}`];
  });
  expect(wrong).toEqual([]);
});

test("what the catalogue does not have, and what is no ingredient, is not taken for one of its entries", () => {
  expect([...unknown, ...others].filter((name) => nameRead(name) !== null)).toEqual([]);
});

test("what a careful person asks back about is not guessed", () => {
  // Cherries that are called nothing else are sweet ones.
  expect(ambiguous.filter((name) => nameRead(name) !== null)).toEqual(["Kirschen"]);
});
