import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { callFunction } from "../../../src/worksheet/callFunction";
import { functionMetadata, METADATA_FILES } from "../../../src/worksheet/metadata";
import type { BlockValue } from "../../../taskpane/host";
import { why } from "../../../taskpane/views/why";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

const { Content: Why } = why;

function open(rows: BlockValue[][], select: string, language = "en") {
  const fake = fakeHost({ Ices: rows }, select);
  const { context, said } = paneContext(fake.host, language);
  render(<Why context={context} active />);
  return { ...fake, said };
}

const items = [["water"], ["sucrose"]];
const grams = [[250], [70]];
const point = callFunction("FREEZINGPOINT", items, grams)[0]?.[0] as number;
const mix: BlockValue[][] = [
  ["water", 250],
  ["sucrose", 70],
];
const withFormula = (formula: string): BlockValue[][] => [...mix, ["result", formula]];
const bodyText = () => document.body.textContent;

test("a freezing point is shown with its working, the ideal law beside it and its sources", async () => {
  open(withFormula(`=RIME.FREEZINGPOINT(A1:A2,B1:B2) → ${point}`), "B3");
  await screen.findByText("The working");
  // OpenStax Chemistry 2e, 11.4: ΔT = Kf·m with Kf 1.86; 70 g / 342.297 g/mol in 0.25 kg.
  const idealK = ((1.86 * 70) / 342.297 / 0.25).toFixed(2);
  expect(bodyText()).toContain(
    `it would be −${idealK} °C; really it is −${(-point).toFixed(2)} °C`,
  );
  expect(bodyText()).toContain("depression by the ideal law");
  expect(bodyText()).toContain("Murphy");
  expect(bodyText()).not.toContain("recalculated");
});

test("the ideal law's share of ice follows from its depression", async () => {
  open(withFormula("=RIME.ICEFRACTION(A1:A2,B1:B2,-10) → 0.8"), "B3");
  await screen.findByText("The working");
  const ideal = 1 - (1.86 * 70) / 342.297 / 0.25 / 10;
  expect(bodyText()).toContain(`it would be ${(ideal * 100).toFixed(1)}\u202f%`);
});

test("a cell that shows something else than its formula gives now is told of", async () => {
  open(withFormula("=RIME.FREEZINGPOINT(A1:A2,B1:B2) → -1.5"), "B3");
  expect(await screen.findByText(/The cell shows −1.5, which is not/)).toBeTruthy();
});

test("a refused call shows its whole sentence, which Excel may hide", async () => {
  const { said } = open(
    [
      ["water", 250],
      ["sucrosse", 70],
      ["", "=RIME.FREEZINGPOINT(A1:A2,B1:B2) → #VALUE!"],
    ],
    "B3",
  );
  expect(await screen.findByText(/It declines, since:.*sucrosse/)).toBeTruthy();
  await waitFor(() => expect(said.join(" ")).toContain("sucrosse"));
});

test("one of several recipes of a spilled call is chosen by number", async () => {
  open(
    [
      ["water", "sucrose", ""],
      [250, 70, "=RIME.FREEZINGPOINT(A1:B1,A2:B3) → -1.7"],
      [250, 140, ""],
    ],
    "C2",
  );
  await screen.findByText("The working");
  expect(bodyText()).toContain("70 / 342.297");
  fireEvent.change(screen.getByLabelText("Which recipe"), { target: { value: "1" } });
  expect(bodyText()).toContain("140 / 342.297");
});

test("a calculation inside the formula is named as what cannot be followed", async () => {
  open(withFormula('=RIME.MOLES("salt",B1*2) → 4'), "B3");
  expect(await screen.findByText(/“B1\*2” is a calculation inside the formula/)).toBeTruthy();
});

test("a cell without our functions says so, in German too", async () => {
  open(withFormula("=SUM(B1:B2) → 320"), "B3", "de");
  expect(await screen.findByText(/Ices!B3 enthält keine unserer Funktionen/)).toBeTruthy();
});

test("the working is read in German, with a decimal comma", async () => {
  open(withFormula(`=RIME.FREEZINGPOINT(A1:A2,B1:B2) → ${point}`), "B3", "de");
  await screen.findByText("Erniedrigung nach dem idealen Gesetz");
  expect(bodyText()).toContain("70 / 342,297");
  expect(bodyText()).not.toContain("molality of");
});

test("and so is what each argument stands for, by the words that the spreadsheet shows", async () => {
  open(withFormula(`=RIME.FREEZINGPOINT(A1:A2,B1:B2) → ${point}`), "B3", "de");
  await screen.findByText("Erniedrigung nach dem idealen Gesetz");
  const [freezingPoint, english] = ["functions.de.json", "functions.json"].map((file) =>
    functionMetadata(METADATA_FILES[file]).functions.find(({ id }) => id === "FREEZINGPOINT"),
  );
  for (const [at, { description }] of freezingPoint!.parameters.entries()) {
    expect(bodyText()).toContain(description.replace(/; ohne Angabe .*$/, ""));
    expect(bodyText()).not.toContain(english!.parameters[at]!.description);
  }
});

test("and so is the sentence of a refusal", async () => {
  const { said } = open(withFormula('=RIME.MOLES("sucros",B2) → #N/A'), "B3", "de");
  const sentence =
    "solute: „sucros“ steht weder im Katalog noch unter den eigenen Zutaten; am nächsten kommt „sucrose“.";
  expect(await screen.findByText(new RegExp(sentence))).toBeTruthy();
  await waitFor(() => expect(said.at(-1)).toBe(sentence));
});

test("another selected cell is explained in its turn", async () => {
  const fake = open(
    [...mix, ["", '=RIME.MOLES("sucrose",B2) → 0.2'], ["", "=RIME.OSMOLALITY(A1:A2,B1:B2) → 1"]],
    "B3",
  );
  await screen.findByText(/RIME.MOLES/);
  fake.select("B4");
  expect(await screen.findByText(/=RIME.OSMOLALITY/)).toBeTruthy();
});
