import { helpSite } from "../../src/help/helpSite";
import { worksheetFunctions } from "../../src/worksheet/functions";

const pages = new Map(helpSite().map(({ name, html }) => [name, html]));

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

test.each(worksheetFunctions.map(({ name }) => name))(
  "the page of %s shows an answer that is not an error",
  (name) => {
    const html = pages.get(`${name.toLowerCase()}.html`) ?? "";
    expect(html).toContain(`RIME.${name}(`);
    expect(html).not.toContain("#VALUE!:");
    expect(html).not.toContain("undefined");
  },
);
