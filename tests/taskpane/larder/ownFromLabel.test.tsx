import { fireEvent, screen, waitFor } from "@testing-library/preact";
import { callFunction } from "../../../src/worksheet/callFunction";
import { toMatrix } from "../../../taskpane/bowl/cells";
import { fakeHost } from "../fakeHost";
import { openLarder, press, type } from "./larderView";

const names = () => [
  ["What our names mean", "", "", ""],
  ["name", "same as", "water", "source"],
  ["Milk", "whole milk", "", ""],
];

async function openForm(fake: ReturnType<typeof fakeHost> | null, language = "en") {
  const said = openLarder(fake?.host ?? null, language);
  press(language === "de" ? /^Eigene, nach Etikett/ : /^Own, from a label/);
  await screen.findByRole("heading", { level: 2 });
  return said;
}

const jam = () => {
  type("Name, as", "Our jam");
  type("Fat", "0.2");
  type("Carbohydrate", "60");
  type("of which sugars", "60");
};

const choose = (label: string | RegExp, value: string) =>
  fireEvent.change(screen.getByLabelText(label), { target: { value } });

const freezes = (rows: Parameters<typeof toMatrix>[0], name = "Our jam") =>
  callFunction("FREEZINGPOINT", [["water"], [name]], [[80], [20]], toMatrix(rows))[0]?.[0];

describe("an ingredient of one's own from its label", () => {
  test("goes to a new sheet, and FREEZINGPOINT understands what stands there", async () => {
    const fake = fakeHost({ Ices: [["x"]] }, "A1");
    const said = await openForm(fake);
    jam();
    expect(await screen.findByText("Cells that would be written")).toBeTruthy();
    press("Write");
    await waitFor(() => expect(said.join(" ")).toContain("The functions understand “Our jam”"));
    const written = fake.sheets["Own ingredients"]!;
    expect(written[0]!.slice(0, 3)).toEqual(["name", "water", "fat"]);
    // Against print: 12 g of sucrose in 88 g of solution, CRC Handbook, 102nd ed.: 12 %, −0.77 °C
    expect(Math.abs((freezes(written) as number) + 0.77)).toBeLessThan(0.02);
  });

  test("or beneath the own ingredients there are, which stay as they were", async () => {
    const fake = fakeHost({ Names: names() }, "A1");
    const said = await openForm(fake);
    jam();
    choose(/^Its sugars are/, "invert");
    await screen.findByText("Cells that would be written");
    press("Write");
    await waitFor(() => expect(said.join(" ")).toContain("Formulas that name Names!A2:D3"));
    const [, head, milk, added] = fake.sheets["Names"]!;
    expect([head!.slice(0, 4), milk!.slice(0, 4)]).toEqual([names()[1], names()[2]]);
    expect([added![0], added![2]]).toEqual(["Our jam", 39.8]);
    const own = fake.sheets["Names"]!.slice(1).map((row) =>
      Array.from({ length: head!.length }, (_, at) => row[at] ?? ""),
    );
    expect(freezes(own)).toBeLessThan(-1.2);
    expect(freezes(own, "Milk")).toBe(freezes(own, "whole milk"));
  });

  test("says what it takes for granted, and what it makes of it", async () => {
    await openForm(null);
    jam();
    expect(screen.getByText(/the rest, 39\.8 g, is taken as water/)).toBeTruthy();
    expect(screen.getByText(/taken as sucrose; glucose or fructose/)).toBeTruthy();
    expect(screen.getByText(/0\.5\d*\s±\s0\.\d+ times as much as sucrose/)).toBeTruthy();
  });

  test("what does not add up is said and not written", async () => {
    const fake = fakeHost({ Names: names() }, "A1");
    const said = await openForm(fake);
    jam();
    type("Fat", "55");
    await screen.findByText(/115\.0 g per 100 g, 15\.0 g too much/);
    fireEvent.click(await screen.findByRole("button", { name: "Write" }));
    expect(said.join()).toMatch(/too much/);
    expect(fake.sheets["Names"]).toEqual(names());
  });

  test("a name that is there already is not given twice", async () => {
    const fake = fakeHost({ Names: names() }, "A1");
    await openForm(fake);
    jam();
    type("Name, as", "MILK");
    expect(await screen.findByText(/“MILK” is in Names!A2:D3 already/)).toBeTruthy();
    press("Write");
    expect(fake.sheets["Names"]).toEqual(names());
  });

  test("it may be the same as an entry of the larder", async () => {
    const fake = fakeHost({ Names: names() }, "A1");
    const said = await openForm(fake);
    type("Name, as", "Dad's honey");
    choose(/^What is known/, "same");
    type("The same as", "honey, average");
    await screen.findByText("Cells that would be written");
    press("Write");
    await waitFor(() => expect(said.join(" ")).toContain("understand “Dad's honey”"));
    expect(fake.sheets["Names"]![3]!.slice(0, 2)).toEqual(["Dad's honey", "honey, average"]);
  });

  test("a protected sheet ends in one sentence, and nothing is written", async () => {
    const fake = fakeHost({ Names: names() }, "A1");
    fake.faults.writeCells = Object.assign(new Error("denied"), { code: "AccessDenied" });
    await openForm(fake);
    jam();
    await screen.findByText("Cells that would be written");
    press("Write");
    expect(await screen.findByText(/The sheet is protected/)).toBeTruthy();
    expect(fake.sheets["Names"]).toEqual(names());
  });

  test("in German it reads decimal commas and heads its columns in German", async () => {
    const fake = fakeHost({ Ices: [["x"]] }, "A1");
    const said = await openForm(fake, "de");
    type("Name, wie", "Unsere Marmelade");
    type("davon Zucker", "59,5");
    await screen.findByText("Zellen, die geschrieben würden");
    press("Schreiben");
    await waitFor(() => expect(said.join(" ")).toContain("verstehen „Unsere Marmelade“"));
    expect(fake.sheets["Eigene Zutaten"]!.map((row) => row.slice(0, 3))).toEqual([
      ["name", "Wasser", "Zucker"],
      ["Unsere Marmelade", 40.5, 59.5],
    ]);
  });
});
