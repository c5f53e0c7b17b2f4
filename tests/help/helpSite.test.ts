import { bibliography } from "../../src/foundation/bibliography";
import { helpSite } from "../../src/help/helpSite";
import { refusalsOf } from "../../src/help/refusals";
import { worksheetFunctions } from "../../src/worksheet/functions";
import { problemOf } from "../worksheet/ask";

const pages = new Map(helpSite().map(({ name, html }) => [name, html]));
const pageOf = (name: string) => pages.get(`${name.toLowerCase()}.html`) ?? "";
const escaped = (text: string) =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/"/g, "&quot;");
/** The text of a page as it is read, without what one types quotes as. */
const textOf = (html: string) => html.replace(/&quot;/g, '"').replace(/&amp;/g, "&");

test("every function has a page, and the index leads to it", () => {
  const names = worksheetFunctions.map(({ name }) => `${name.toLowerCase()}.html`);
  expect([...pages.keys()].sort()).toEqual(["index.html", ...names].sort());
  for (const name of names) expect(pages.get("index.html")).toContain(`href="${name}"`);
});

test("every link of every page leads to a page", () => {
  for (const html of pages.values()) {
    for (const [, target = ""] of html.matchAll(/href="([^"]+)"/g)) {
      expect([...pages.keys(), "validation.html"]).toContain(target); // the build adds that one
    }
  }
});

describe.each(worksheetFunctions.map((definition) => [definition.name, definition] as const))(
  "the page of %s",
  (name, definition) => {
    const html = pageOf(name);

    test("has its signature, every argument, the method, the sources and what to see besides", () => {
      expect(html).toContain(`=RIME.${name}(`);
      for (const { name: parameter, description } of definition.parameters) {
        expect(html).toContain(`<th scope="row">${parameter}</th>`);
        expect(textOf(html)).toContain(description);
      }
      expect(html).toContain("<h2>How it is computed</h2>");
      if (definition.method !== undefined) {
        expect(html.replace(/&gt;/g, ">")).toContain(escaped(definition.method));
      }
      for (const key of definition.sources) expect(textOf(html)).toContain(bibliography[key]);
      for (const other of definition.seeAlso ?? []) {
        expect(html).toContain(`href="${other.toLowerCase()}.html"`);
      }
    });

    test("says of every argument that may be left out what stands for it then", () => {
      for (const parameter of definition.parameters) {
        if (!parameter.optional || parameter.name === "ownIngredients") continue;
        const row = textOf(html)
          .split(`<th scope="row">${parameter.name}</th>`)[1]!
          .split("</tr>")[0];
        expect(row).toMatch(/\S+ when left out/);
        expect(row).toContain("Optional");
      }
    });

    test("shows an answer to its example that is no error", () => {
      const example = html.split("<h2>Example</h2>")[1]!.split("<section")[0]!;
      expect(example).toMatch(/<td>[^<]+<\/td>/);
      expect(example).not.toContain("#VALUE!:");
      expect(html).not.toMatch(/undefined|NaN|\[object/);
    });

    test("shows for every argument a sentence that names it", () => {
      const refusals = refusalsOf(definition);
      for (const { name: parameter } of definition.parameters) {
        const own = refusals.filter((refusal) => refusal.parameter === parameter);
        expect(own.length).toBeGreaterThan(0);
        expect(own[0]!.problem.message.startsWith(parameter)).toBe(true);
        for (const { problem } of own) expect(textOf(html)).toContain(problem.message);
      }
    });
  },
);

test("the sentences are those that cells show", () => {
  const misspelt = problemOf("FREEZINGPOINT", [["wate"], ["sucrose"]], [[200], [70]]);
  expect(misspelt.message).toContain('"water"');
  expect(textOf(pageOf("FREEZINGPOINT"))).toContain(`#N/A: ${misspelt.message}`);
  const negative = problemOf("MOLES", "sodium chloride", -1);
  expect(textOf(pageOf("MOLES"))).toContain(`#VALUE!: ${negative.message}`);
});
