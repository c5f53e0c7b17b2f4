import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { callFunction } from "../../../src/worksheet/callFunction";
import type { BlockValue } from "../../../taskpane/host";
import { curves } from "../../../taskpane/views/curves";
import { english } from "../../../taskpane/words/english";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

const { Content: Curves } = curves;

const twoIces = (): BlockValue[][] => [
  ["Plum ice", ""],
  ["Ingredient", "g"],
  ["water", 250],
  ["sucrose", 70],
  ["", ""],
  ["Tart ice", ""],
  ["Ingredient", "g"],
  ["water", 250],
  ["sucrose", 120],
];

function open(rows = twoIces(), select = "A3") {
  const fake = fakeHost({ Ices: rows }, select);
  const { context, said } = paneContext(fake.host);
  render(<Curves context={context} active />);
  return { ...fake, said };
}

const choose = (picture: keyof typeof english.curves.pictures) =>
  fireEvent.change(screen.getByLabelText("Picture"), { target: { value: picture } });
const pictureName = async () => (await screen.findByRole("img")).getAttribute("aria-label") ?? "";

test("every picture says in words what it shows and has its table", async () => {
  open();
  await pictureName();
  for (const picture of ["freezing", "state", "held", "movers"] as const) {
    choose(picture);
    expect((await pictureName()).length).toBeGreaterThan(20);
    expect(document.querySelectorAll(".picture-table tbody tr").length).toBeGreaterThan(1);
    expect(document.querySelector("figure")?.textContent).not.toMatch(/NaN|undefined|null/);
  }
});

test("near the first ice the table says from nothing to how much, and nothing less than nothing", async () => {
  // 250 g of water and so much sucrose that first ice comes a hair below −2 °C, a row of the table.
  const [ice, band] = ["ICEFRACTION", "UNCERTAINTY"];
  const rows = twoIces();
  rows[3] = ["sucrose", 83.2];
  const mix = [
    [["water"], ["sucrose"]],
    [[250], [83.2]],
  ] as const;
  const at = (name: string, ...more: unknown[]) =>
    callFunction(name, ...mix, ...more)[0]![0] as number;
  expect(at(ice, -2)).toBe(0);
  expect(at(band, "ice fraction", -2)).toBeGreaterThan(0);
  open(rows);
  await pictureName();
  const cells = [...document.querySelectorAll(".picture-table tbody tr")].map((row) =>
    row.textContent.replace(/\u2060/g, "").replace(/\s/g, " "),
  );
  expect(cells[0]).toBe("00.0 %");
  expect(cells[1]).toMatch(/^−20–0\.\d+ %$/);
});

test("a second recipe stands beside the first, dashed, in the picture and in the table", async () => {
  const fake = open();
  fireEvent.click(await screen.findByText("Set “Plum ice” beside the next recipe"));
  fake.select("A8");
  await waitFor(async () => expect(await pictureName()).toContain("“Plum ice”"));
  await screen.findByText("Beside it, dashed: Plum ice");
  expect(document.querySelectorAll(".curve-other").length).toBe(1);
  const heads = [...document.querySelectorAll(".picture-table thead th")].map(
    (th) => th.textContent,
  );
  expect(heads).toEqual(["°C", "Tart ice", "Plum ice"]);
  fireEvent.click(screen.getByText("Take it away"));
  await waitFor(() => expect(document.querySelectorAll(".curve-other").length).toBe(0));
});

test("a recipe no function answers about shows the sentence instead of an empty picture", async () => {
  open(
    [
      ["Ingredient", "g"],
      ["water", 250],
      ["sucrosse", 70],
      ["sugar", 5],
    ],
    "A2",
  );
  expect(await screen.findByText(/"sucrosse" is neither/)).toBeTruthy();
  expect(screen.queryByRole("img")).toBeNull();
});
