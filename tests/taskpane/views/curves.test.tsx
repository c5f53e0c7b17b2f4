import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
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
