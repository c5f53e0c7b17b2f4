import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { callFunction } from "../../../src/worksheet/callFunction";
import type { BlockValue } from "../../../taskpane/host";
import { notebook } from "../../../taskpane/views/notebook";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

const { Content: Notebook } = notebook;

const ices = (): BlockValue[][] => [
  ["Strawberry ice", ""],
  ["Ingredient", "g"],
  ["water", 150],
  ["sucrose", 50],
  ["strawberry", 100],
];
const point = callFunction(
  "FREEZINGPOINT",
  [["water"], ["sucrose"], ["strawberry"]],
  [[150], [50], [100]],
)[0]?.[0] as number;

function open(language = "en") {
  const fake = fakeHost({ Ices: ices() }, "A3");
  const { context, said } = paneContext(fake.host, language);
  render(<Notebook context={context} active />);
  return { ...fake, said };
}

/** A field by the beginning of its label; its unit follows. */
const field = (label: string) => screen.getByLabelText<HTMLInputElement>(new RegExp(`^${label}`));
const type = (label: string, text: string) =>
  fireEvent.input(field(label), { target: { value: text } });

function writeDown(measured: string) {
  type("First ice, measured", measured);
  fireEvent.click(screen.getByText("Write it down"));
}

test("the first line starts a sheet, the next goes below it, forecast and recipe with them", async () => {
  const fake = open();
  await screen.findByText(/the first line starts a new sheet/);
  writeDown("−1,6");
  await screen.findByText("1 line on the sheet “Notebook”");
  writeDown("-1.7");
  await screen.findByText("2 lines on the sheet “Notebook”");
  const [headers, first, second] = fake.sheets["Notebook"]!;
  const at = (name: string) => headers!.indexOf(name);
  expect(first![at("first ice measured, °C")]).toBe(-1.6);
  expect(second![at("first ice measured, °C")]).toBe(-1.7);
  expect(first![at("first ice forecast, °C")]).toBe(point);
  expect(first![at("weighed")]).toBe("water 150 g; sucrose 50 g; strawberry 100 g");
  expect(fake.said.join(" ")).toContain("Written to Notebook");
});

test("an empty form writes nothing and says what it wants", async () => {
  const fake = open();
  fireEvent.click(await screen.findByText("Write it down"));
  expect(await screen.findByText(/Enter at least one measurement or a note/)).toBeTruthy();
  expect(Object.keys(fake.sheets)).toEqual(["Ices"]);
});

test("a number that cannot be is refused in a sentence and not written", async () => {
  const fake = open();
  await screen.findByText("Write it down");
  type("First ice, measured", "cold");
  expect(
    await screen.findByText("It must be a number from −60 to 40 °C, not “cold”."),
  ).toBeTruthy();
  type("Note", "windy");
  fireEvent.click(screen.getByText("Write it down"));
  await waitFor(() => expect(document.activeElement).toBe(field("First ice, measured")));
  expect(Object.keys(fake.sheets)).toEqual(["Ices"]);
});

test("one measurement teaches one ingredient, written only when asked, and it then explains it", async () => {
  const fake = open();
  await screen.findByText("Write it down");
  writeDown(String(point - 0.15));
  await screen.findByText("1 line on the sheet “Notebook”");
  fireEvent.change(screen.getAllByLabelText("Ingredient")[0]!, { target: { value: "strawberry" } });
  await screen.findByText(/what is dissolved in strawberry counts/);
  expect(Object.keys(fake.sheets)).toEqual(["Ices", "Notebook"]);
  fireEvent.click(screen.getByText(/Put the corrected ingredient/));
  await screen.findByText(/The sheet “Own ingredients” holds/);
  const own = fake.sheets["Own ingredients"]!;
  const [[again] = []] = callFunction(
    "FREEZINGPOINT",
    [["water"], ["sucrose"], ["strawberry"]],
    [[150], [50], [100]],
    own,
  );
  expect(again).toBeCloseTo(point - 0.15, 5);
});

test("freezer readings give its offset", async () => {
  open();
  await screen.findByText("Write it down");
  type("Freezer, measured", "-15");
  fireEvent.click(screen.getByText("Write it down"));
  expect(await screen.findByText(/This freezer is 3.0 K warmer than it is set to/)).toBeTruthy();
});

test("a filled cell below the notebook stops the line, and nothing is lost", async () => {
  const fake = open();
  await screen.findByText("Write it down");
  writeDown("-1.6");
  await screen.findByText("1 line on the sheet “Notebook”");
  fake.faults.insert = Object.assign(new Error("no"), { code: "AccessDenied" });
  writeDown("-1.9");
  await screen.findByText(/The sheet is protected/);
  // What was typed is still there to be written again.
  await waitFor(() => expect(field("First ice, measured").value).toBe("-1.9"));
});

test("in German, with its sheet and headers", async () => {
  const fake = open("de");
  await screen.findByText("Aufschreiben");
  type("Brix der Mischung, gemessen", "18,5");
  fireEvent.click(screen.getByText("Aufschreiben"));
  await screen.findByText(/1 Zeile auf dem Blatt „Heft“/);
  expect(fake.sheets["Heft"]![0]).toContain("Brix gemessen");
});
