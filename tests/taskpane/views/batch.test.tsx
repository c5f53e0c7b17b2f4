import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { callFunction } from "../../../src/worksheet/callFunction";
import type { BlockValue } from "../../../taskpane/host";
import { batch } from "../../../taskpane/views/batch";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

const { Content: Batch } = batch;

const ices = (): BlockValue[][] => [
  ["Honey ice", "", ""],
  ["Ingredient", "g", "Price per kg"],
  ["whole milk", 300, 1.1],
  ["honey, average", 60, 12],
  ["sucrose", 40, 1.4],
  ["", "", ""],
  ["Plain ice", "", ""],
  ["Ingredient", "g", "Price per kg"],
  ["whole milk", 300, 1.1],
  ["sucrose", 80, 1.4],
];

function open(rows = ices(), select = "A4", language = "en") {
  const fake = fakeHost({ Ices: rows }, select);
  const { context, said } = paneContext(fake.host, language);
  render(<Batch context={context} active />);
  return { ...fake, said };
}

const part = async (title: string) => {
  const summary = await screen.findByText(title, { selector: "summary" });
  return summary.closest("details")!;
};
const inside = async (title: string, text: RegExp) =>
  waitFor(async () => {
    const found = (await part(title)).textContent;
    expect(found).toMatch(text);
    return found;
  });
const fieldIn = (details: Element, label: string) =>
  [...details.querySelectorAll("label")]
    .find((each) => each.textContent.startsWith(label))!
    .querySelector("input")!;

test("the batch scales to a number of pieces, and goes into empty cells only", async () => {
  const fake = open();
  const size = await part("Size");
  fireEvent.change(size.querySelector("select")!, { target: { value: "pieces" } });
  fireEvent.input(fieldIn(size, "Pieces"), { target: { value: "20" } });
  fireEvent.input(fieldIn(size, "Each"), { target: { value: "50" } });
  await inside("Size", /1000 g in all, 2.5 times the recipe/);
  fireEvent.click(screen.getByText("Put the scaled recipe in the sheet"));
  await screen.findByText("Ices!A4:B7");
  expect(screen.getByText("Write").getAttribute("aria-disabled")).toBe("true");
  fireEvent.click(screen.getByText("Write"));
  fake.select("F1");
  await screen.findByText("Ices!F1:G4");
  fireEvent.click(screen.getByText("Write"));
  await waitFor(() => expect(fake.sheets["Ices"]![1]![6]).toBe(750));
  expect(fake.sheets["Ices"]![3]!.slice(5)).toEqual(["sucrose", 100]);
});

test("hours to freeze are RIME.FREEZINGTIME's, with the method's ± 30 %", async () => {
  open();
  const args = [
    [["whole milk"], ["honey, average"], ["sucrose"]],
    [[300], [60], [40]],
    ...[40, -18, 4, null, "still", "slab"],
  ];
  const hours = callFunction("FREEZINGTIME", ...args)[0]?.[0] as number;
  await inside(
    "Hours to freeze",
    new RegExp(
      `About ${hours.toFixed(1)} h.*between ${(hours * 0.7).toFixed(1)} and ${(hours * 1.3).toFixed(1)} h`,
    ),
  );
});

test("the cost goes by the price column and what its header says", async () => {
  open();
  // 0.3 × 1.1 + 0.06 × 12 + 0.04 × 1.4
  await inside("Cost", /1\.11 for the batch, 0\.28 per 100 g/);
});

test("too much in the bowl: what restores the proportions, and what alone brings the freezing point back", async () => {
  open();
  const rescue = await part("What is in the bowl");
  fireEvent.input(fieldIn(rescue, "sucrose"), { target: { value: "60" } });
  const text = await inside("What is in the bowl", /To have the recipe’s proportions again/);
  expect(text).toContain("150.0 g whole milk");
  expect(text).toContain("30.0 g honey, average");
  // Worked out between two drawings: it comes a little later.
  await inside("What is in the bowl", /Or one of these alone/);
});

test("two versions stand side by side with their differences", async () => {
  const fake = open();
  fireEvent.click(await screen.findByText("Keep “Honey ice” as the other version"));
  fake.select("A9");
  const text = await inside("Beside another version", /Plain ice/);
  expect(text).toContain("honey, average");
  expect(text).toMatch(/First ice, °C/);
});

test("a base mix used in a recipe is written out, and can become an own ingredient", async () => {
  const rows = ices();
  rows[9] = ["plain ice", 200, ""];
  rows.push(["", "", ""], ["Nut ice", "", ""], ["Ingredient", "g", ""], ["Plain ice", 190, ""]);
  rows[9] = ["sucrose", 80, 1.4];
  rows.push(["hazelnuts", 20, ""]);
  const fake = open(rows, "A9");
  fireEvent.click(await screen.findByText("Keep “Plain ice” as the base mix"));
  await screen.findByText("Put the base in the sheet as own ingredients");
  fake.select("A14");
  // 190 g of 380 g: half of each.
  const text = await inside("Base mix used in it", /hazelnuts20\.0/);
  expect(text).toContain("whole milk150.0");
  expect(text).toContain("sucrose40.0");
  expect((await part("Label text")).textContent).toMatch(/whole milk \(MILK\), sucrose/);
});

test("the label goes by descending mass and stresses milk", async () => {
  open();
  const text = await inside("Label text", /Ingredients:/);
  expect(text).toMatch(/whole milk \(MILK\), honey, average, sucrose/);
});

test("the card goes on a new sheet with its germs line, cautions and sources", async () => {
  const fake = open();
  fireEvent.click(await screen.findByText("Put on a new sheet"));
  await screen.findByText("The card is on the sheet “Card Honey ice”.");
  const text = fake.sheets["Card Honey ice"]!.flat().join("\n");
  expect(text).toContain("Freezing does not kill germs");
  expect(text).toContain("not for children under 12 months");
  expect(text).toContain("Murphy");
  expect(text).not.toMatch(/NaN|undefined|\[object/);
});

test("the card and the versions go by the target that the sheet names, until another temperature is typed", async () => {
  const rows = ices();
  rows[0]![1] = "scooped at −18";
  const fake = open(rows);
  const card = await part("Card");
  expect(fieldIn(card, "Served at").value).toBe("−18");
  fireEvent.click(screen.getByText("Keep “Honey ice” as the other version"));
  fireEvent.input(fieldIn(card, "Served at"), { target: { value: "−8" } });
  fireEvent.click(screen.getByText("Put on a new sheet"));
  await waitFor(() => expect(fake.sheets["Card Honey ice"]).toBeDefined());
  expect(fake.sheets["Card Honey ice"]!.flat().join("\n")).toContain("−8 °C");
  fake.select("A9");
  await inside("Beside another version", /at −8\s°C/);
});

test("everything is there in German", async () => {
  open(ices(), "A4", "de");
  await inside("Stunden bis zum Gefrieren", /Etwa \d+,\d h/);
  await inside("Kosten", /1,11 für den Ansatz/);
});
