import { fireEvent, screen, within } from "@testing-library/preact";
import { callFunction } from "../../../src/worksheet/callFunction";
import { openEntry, openLarder, press } from "./larderView";

const compare = (one: string, other: string, language?: string) => {
  const said = openLarder(null, language);
  openEntry(one);
  press(language === "de" ? /^Vergleichen mit/ : /^Compare with/);
  openEntry(other);
  return said;
};

const figures = (label: RegExp) =>
  within(screen.getByRole("rowheader", { name: label }).closest("tr")!)
    .getAllByRole("cell")
    .map(({ textContent }) => textContent.trim());

describe("two entries side by side", () => {
  test("stand under one label each, with their bands, and are announced", () => {
    const said = compare("sucrose", "glucose");
    expect(said).toContain("sucrose and glucose stand side by side.");
    expect(document.activeElement?.textContent).toBe("sucrose and glucose");
    const [sucrose, glucose] = figures(/lowers the freezing point, gram for gram/);
    expect(sucrose).toBe("1");
    // CRC Handbook, 102nd ed., 10 % by mass: glucose 1.17 K, sucrose 0.63 K
    expect(Math.abs(parseFloat(glucose!) - 1.17 / 0.63)).toBeLessThan(0.03);
    expect(glucose).toMatch(/±/);
  });

  test("may be a solute and an ingredient, and what one lacks is a dash", () => {
    compare("sucrose", "honey, average");
    const sweetness = figures(/^sweetness/);
    expect(sweetness[0]).toMatch(/^100/);
    const asked = callFunction("SWEETNESS", "honey, average", 100)[0]![0] as number;
    expect(Math.abs(parseFloat(sweetness[1]!) - asked)).toBeLessThan(0.5);
    expect(figures(/^water/)).toEqual(["–", expect.stringMatching(/^17/)]);
    expect(figures(/^first ice/)).toEqual(["–", "none forms"]);
  });

  test("every figure says where it comes from", () => {
    compare("sucrose", "honey, average");
    for (const name of ["sucrose", "honey, average"]) {
      const origins = screen
        .getByText(`Where the figures of ${name} come from`)
        .closest("details")!;
      const whys = [...origins.querySelectorAll(".figure-why")];
      expect(whys.length).toBeGreaterThan(6);
      for (const why of whys) expect(why.textContent).not.toBe("");
    }
  });

  test("Escape leads back, from choosing to the entry and from the comparison to the search", async () => {
    openLarder(null);
    openEntry("sucrose");
    press(/^Compare with/);
    fireEvent.keyDown(screen.getByRole("searchbox"), { key: "Escape" });
    expect(screen.getByRole("heading", { name: "sucrose" })).toBeTruthy();
    press(/^Compare with/);
    openEntry("glucose");
    fireEvent.keyDown(screen.getByRole("heading", { level: 2 }), { key: "Escape" });
    expect(await screen.findByRole("searchbox")).toBeTruthy();
  });

  test("in German with decimal commas", () => {
    compare("sucrose", "glucose", "de");
    expect(figures(/senkt den Gefrierpunkt/)[1]).toMatch(/^1,8/);
  });
});

describe("an entry's own figures", () => {
  test("a watery one says what gram for gram means, and what its dissolved matter does", () => {
    openLarder(null);
    openEntry("whole milk");
    const why = screen.getByText(/gram for gram/).closest("li")!.textContent;
    expect(why).toMatch(
      /10 g of it as it is in 90 g of water.*the water it brings counts as water/,
    );
    expect(screen.getByText(/per gram of what is dissolved/)).toBeTruthy();
    expect(screen.getByText(/solubility at 20 °C, lactose/)).toBeTruthy();
  });

  test("figures that the catalogue lacks are said to be lacking", () => {
    openLarder(null);
    openEntry("milk salts");
    expect(screen.getByText(/no figure with a source for:.*sweetness/)).toBeTruthy();
  });
});
