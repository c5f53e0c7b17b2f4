import fs from "node:fs";
import path from "node:path";
import { helpSite } from "../../src/help/helpSite";
import { worksheetFunctions } from "../../src/worksheet/functions";
import { functionMetadata, METADATA_FILES } from "../../src/worksheet/metadata";
import { english } from "../../src/worksheet/words/english";
import { german } from "../../src/worksheet/words/german";
import { SIGNATURES } from "./contract";

// A function lives in six places: the contract, its own file, the list, the metadata of each language, the
// German words and the help. None may know one that another does not.

const contract = SIGNATURES.map((signature) => signature.split("(")[0]!).sort();
const sorted = (names: Iterable<string>) => [...names].sort();

test("the list is the contract's", () => {
  expect(sorted(worksheetFunctions.map(({ name }) => name))).toEqual(contract);
});

test("every file of a function is in the list, and there is one a function", () => {
  const folder = path.join(__dirname, "../../src/worksheet/functions");
  const files = fs.readdirSync(folder).map((file) => file.replace(/\.ts$/, "").toUpperCase());
  expect(sorted(files)).toEqual(contract);
});

test.each(Object.entries(METADATA_FILES))(
  "%s holds the contract's functions",
  (_file, language) => {
    const { functions } = functionMetadata(language);
    expect(sorted(functions.map(({ id }) => id))).toEqual(contract);
    for (const { id, name, description, helpUrl, parameters } of functions) {
      const signature = SIGNATURES.find((one) => one.startsWith(`${id}(`))!;
      const shown = parameters.map((one) => ("optional" in one ? `[${one.name}]` : one.name));
      expect(`${name}(${shown.join(", ")})`).toBe(signature);
      expect(description).toMatch(/\.$/);
      expect(helpUrl).toMatch(new RegExp(`/help/${id.toLowerCase()}\\.html$`));
      for (const one of parameters) {
        expect([one.type, one.dimensionality, "repeating" in one]).toEqual([
          "any",
          "matrix",
          false,
        ]);
      }
    }
  },
);

test("every function has its help page, and there is no other page but the index", () => {
  const pages = helpSite().map(({ name }) => name.replace(/\.html$/, "").toUpperCase());
  expect(sorted(pages)).toEqual(sorted([...contract, "INDEX"]));
});

describe("German", () => {
  const numbersIn = (text: string) =>
    text.replace(/(\d),(\d)/g, "$1.$2").match(/-?\d[\d.e]*/g) ?? [];
  const englishOf = functionMetadata(english).functions;
  const germanOf = functionMetadata(german).functions;

  test("has words for every function and argument of the contract, and no others", () => {
    const words = Object.entries(german.functions).map(([name, { parameters }]) => {
      const signature = SIGNATURES.find((one) => one.startsWith(`${name}(`)) ?? "";
      const named = signature
        .slice(name.length + 1, -1)
        .replace(/[[\]]/g, "")
        .split(", ");
      return [name, sorted(Object.keys(parameters)), sorted(named)] as const;
    });
    expect(sorted(words.map(([name]) => name))).toEqual(contract);
    for (const [name, has, wants] of words) expect([name, has]).toEqual([name, wants]);
  });

  test.each(englishOf.map((one, at) => [one.id, one, germanOf[at]!] as const))(
    "says of %s the same ranges, defaults and words as the English",
    (_id, one, other) => {
      expect(other.description).not.toBe(one.description);
      one.parameters.forEach(({ name, description }, at) => {
        const translated = other.parameters[at]!.description;
        expect([name, translated]).not.toEqual([name, description]);
        expect([name, numbersIn(translated)]).toEqual([name, numbersIn(description)]);
      });
    },
  );

  test("names every word that an argument takes as it stands in cells", () => {
    const choices = (text: string) =>
      /: (\w[^.;:]*(?:, \w[^.;:]*)+)(?:;|$)/.exec(text)?.[1]?.split(", ");
    let seen = 0;
    englishOf.forEach((one, at) => {
      one.parameters.forEach(({ description }, place) => {
        for (const word of choices(description) ?? []) {
          seen += 1;
          expect(germanOf[at]!.parameters[place]!.description).toContain(word);
        }
      });
    });
    expect(seen).toBeGreaterThan(20);
  });
});
