import { screen, waitFor, within } from "@testing-library/preact";
import { fakeHost } from "../fakeHost";
import { openEntry, openLarder, press, type } from "./larderView";

const recipe = () => [
  ["Lemon ice", "", ""],
  ["Note", "Ingredient", "Amount (g)"],
  ["tap", "water", 500],
  ["", "sucrose", 150],
  ["", "", ""],
];

async function openRow(fake: ReturnType<typeof fakeHost>, name = "lemon juice") {
  const said = openLarder(fake.host);
  openEntry(name);
  press("Insert row…");
  const panel = within(await screen.findByRole("group", { name: `Insert a row: ${name}` }));
  await panel.findByRole("table");
  return { said, panel };
}

describe("a row into the sheet", () => {
  test("goes into the recipe's own columns, shown before and verified after", async () => {
    const fake = fakeHost({ Ices: recipe() }, "C5");
    const { said, panel } = await openRow(fake);
    expect(panel.getByText(/As a line of “Lemon ice”/)).toBeTruthy();
    type("Amount", "40");
    expect(panel.getByRole("rowheader", { name: "Ices!B5" })).toBeTruthy();
    press("Write");
    await waitFor(() => expect(said).toContain("Written and read again: Ices!B5, Ices!C5."));
    expect(fake.sheets["Ices"]![4]).toEqual(["", "lemon juice", 40]);
  });

  test("nothing is written before there is an amount, and never over a filled cell", async () => {
    const fake = fakeHost({ Ices: recipe() }, "C5");
    const { panel } = await openRow(fake);
    press("Write");
    expect(fake.sheets["Ices"]).toEqual(recipe());
    type("Amount", "40");
    fake.select("A3");
    expect(await panel.findByText(/Ices!B3, Ices!C3 is not empty/)).toBeTruthy();
    press("Write");
    await Promise.resolve();
    expect(fake.sheets["Ices"]).toEqual(recipe());
  });

  test("across, the next free column takes it", async () => {
    const across = [
      ["", "water", "sucrose", ""],
      ["Lemon ice", 500, 150, ""],
    ];
    const fake = fakeHost({ Ices: across }, "D2");
    const { said } = await openRow(fake);
    type("Amount", "40");
    press("Write");
    await waitFor(() => expect(said.join()).toContain("Ices!D1, Ices!D2"));
    expect(fake.sheets["Ices"]!.map((row) => row[3])).toEqual(["lemon juice", 40]);
  });

  test("where there is no recipe, name and grams go side by side", async () => {
    const fake = fakeHost({ Ices: [["", "", "", ""]] }, "C4");
    const { said, panel } = await openRow(fake);
    expect(panel.getByText(/No recipe lies under the selection/)).toBeTruthy();
    type("Amount", "12,5");
    press("Write");
    await waitFor(() => expect(said.join()).toContain("Ices!C4, Ices!D4"));
    expect(fake.sheets["Ices"]![3]!.slice(2)).toEqual(["lemon juice", 12.5]);
  });

  test("a cell that was filled meanwhile is left alone and named", async () => {
    const fake = fakeHost({ Ices: recipe() }, "C5");
    const { said } = await openRow(fake);
    type("Amount", "40");
    fake.sheets["Ices"]![4]![1] = "typed just now";
    press("Write");
    await waitFor(() => expect(said.join()).toMatch(/Left alone.*Ices!B5/));
    expect(fake.sheets["Ices"]![4]![1]).toBe("typed just now");
  });
});
