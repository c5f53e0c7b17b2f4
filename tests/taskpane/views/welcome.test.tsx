import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { isProblem } from "../../../src/foundation/problem";
import { callFunction } from "../../../src/worksheet/callFunction";
import { Pane } from "../../../taskpane/components/Pane";
import { bowl } from "../../../taskpane/views/bowl";
import { exampleRecipe } from "../../../taskpane/welcome/exampleRecipe";
import { english } from "../../../taskpane/words/english";
import { german } from "../../../taskpane/words/german";
import { numberFormat } from "../../../taskpane/words/numberFormat";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

const texts = english.welcome;
const EMPTY = { Sheet1: [[""]] };
beforeEach(() => localStorage.clear());

function open(sheets: Parameters<typeof fakeHost>[0] = EMPTY, select = "A1") {
  const fake = fakeHost(sheets, select);
  const { context, said } = paneContext(fake.host);
  render(<bowl.Content context={context} active />);
  return { ...fake, said };
}

describe("the first lines", () => {
  test("put an example on a new sheet and lead there; what there was stays", async () => {
    const { sheets, said, visited } = open();
    fireEvent.click(await screen.findByRole("button", { name: texts.begin }));
    await waitFor(() => expect(visited).toEqual(["Lemon ice!A3"]));
    expect(sheets["Sheet1"]).toEqual([[""]]);
    expect(sheets["Lemon ice"]?.[2]).toEqual(["water", 580]);
    expect(said).toContain(texts.added("Lemon ice"));
  });

  test("are gone once there was a recipe, here and the next time", async () => {
    const first = open(
      {
        Ices: [
          ["Ingredient", "g"],
          ["water", 70],
          ["sucrose", 30],
        ],
        ...EMPTY,
      },
      "A2",
    );
    await screen.findAllByText(english.freezingPoint);
    first.select("A1", "Sheet1");
    await screen.findByText(english.noRecipe.blank("Sheet1!A1"));
    expect(screen.queryByText(texts.sheet)).toBeNull();
    open();
    await waitFor(() =>
      expect(screen.getAllByText(english.noRecipe.blank("Sheet1!A1"))).toHaveLength(2),
    );
    expect(screen.queryByText(texts.sheet)).toBeNull();
  });

  test("can be sent away, and stay away", async () => {
    open();
    fireEvent.click(await screen.findByRole("button", { name: texts.dismiss }));
    await waitFor(() => expect(screen.queryByText(texts.sheet)).toBeNull());
    expect(localStorage).toHaveLength(1);
  });

  test("a host's fault is one sentence", async () => {
    const { faults, said } = open();
    const button = await screen.findByRole("button", { name: texts.begin });
    faults.addSheet = Object.assign(new Error("no"), { code: "AccessDenied" });
    fireEvent.click(button);
    expect(await screen.findByText(english.hostFaults.AccessDenied)).toBeTruthy();
    expect(said).toContain(english.hostFaults.AccessDenied);
  });
});

test.each([english, german])(
  "the example meets its target in $language, and its formulas point at it",
  (words) => {
    const rows = exampleRecipe(words);
    const mix = [
      rows.slice(2, 6).map(([name]) => [name]),
      rows.slice(2, 6).map(([, grams]) => [grams]),
    ];
    const [[verdict]] = callFunction("CHECK", ...mix, "scooped at −13") as [[string]];
    expect(verdict).toBe("meets scooped at −13");
    const formulas = rows.flat().filter((cell) => String(cell).startsWith("="));
    expect(formulas).toHaveLength(4);
    for (const formula of formulas) expect(formula).toContain("(A3:A6,B3:B6");
    expect(String(rows[7]![1]).replace(/^'/, "")).toBe("scooped at −13"); // B8
    expect(
      callFunction("WORKING", ...mix)
        .flat()
        .some((cell) => isProblem(cell)),
    ).toBe(false);
  },
);

describe("help in place", () => {
  const pane = () =>
    render(<Pane host={null} outside={null} words={english} numbers={numberFormat("en")} />);
  const help = () => document.querySelector<HTMLDetailsElement>(".help")!;

  test("says what the view in front is for, and Esc closes it", () => {
    pane();
    help().open = true;
    expect(help().textContent).toContain(english.help.views.larder);
    fireEvent.keyDown(help(), { key: "Escape" });
    expect(help().open).toBe(false);
    expect(document.activeElement?.tagName).toBe("SUMMARY");
  });

  test("closes when another view is opened, and is about that one then", async () => {
    pane();
    help().open = true;
    fireEvent.click(screen.getByRole("tab", { name: "Aims" }));
    await waitFor(() => expect(help().open).toBe(false));
    expect(help().textContent).toContain(english.help.views.aims);
  });
});
