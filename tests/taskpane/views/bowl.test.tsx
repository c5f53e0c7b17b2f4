import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { isProblem } from "../../../src/foundation/problem";
import { callFunction } from "../../../src/worksheet/callFunction";
import type { BlockValue } from "../../../taskpane/host";
import { bowl } from "../../../taskpane/views/bowl";
import { english } from "../../../taskpane/words/english";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

// Every number is held against what the worksheet function answers: the pane has none of its own. That the
// functions are right is tested where they are.

const { Content: Bowl } = bowl;

const sorbet = (): BlockValue[][] => [
  ["Sharp lemon ice", ""],
  ["Ingredient", "g"],
  ["water", 250],
  ["sucrose", 70],
];
const items = [["water"], ["sucrose"]];
const grams = [[250], [70]];
const numberOf = (name: string, ...more: unknown[]) => {
  const value = callFunction(name, items, grams, ...more)[0]![0];
  if (typeof value !== "number") throw new Error(`${name} gave ${JSON.stringify(value)}`);
  return value;
};

function open(
  sheets: Record<string, BlockValue[][]>,
  select: string,
  { language = "en", sheet = Object.keys(sheets)[0]! } = {},
) {
  const fake = fakeHost(sheets, select, sheet);
  const { context, said } = paneContext(fake.host, language);
  render(<Bowl context={context} active />);
  return { ...fake, said };
}

const headline = () => document.querySelector(".headline-value")?.textContent ?? "";
/** The per cent of a row of the table, served and stored. */
const cellsOf = (label: string) =>
  [
    ...screen
      .getAllByRole("row")
      .find((row) => row.textContent.startsWith(label))!
      .querySelectorAll("td"),
  ].map((cell) => parseFloat(cell.textContent));
/** Shown to the digits its uncertainty leaves, never coarser than whole per cent. */
const expectShown = (percent: number | undefined, fraction: number) =>
  expect(Math.abs(percent! - fraction * 100)).toBeLessThan(0.51);
const shown = (text: string) => screen.findByText((_, element) => element?.textContent === text);

describe("a recipe under the selection", () => {
  test("shows the freezing point the cell would show", async () => {
    open({ Ices: sorbet() }, "A3");
    expect(await screen.findByText("Sharp lemon ice")).toBeTruthy();
    const [written] = headline().replace("−", "-").split(/\s/);
    const decimals = written!.split(".")[1]?.length ?? 0;
    expect(written).toBe(numberOf("FREEZINGPOINT").toFixed(decimals));
  });

  test("shows shares of water and mix frozen at serving and storage temperature", async () => {
    open({ Ices: sorbet() }, "A3");
    await screen.findAllByRole("row");
    const [served, stored] = cellsOf(english.cold.iceOfMix);
    expectShown(served, numberOf("ICEFRACTION", -14, "mix"));
    expectShown(stored, numberOf("ICEFRACTION", -18, "mix"));
    const [water] = cellsOf(english.cold.iceOfWater);
    expectShown(water, numberOf("ICEFRACTION", -14, "water"));
  });

  test("follows another serving temperature, typed with a comma, and refuses a word", async () => {
    open({ Ices: sorbet() }, "A3");
    const field = await screen.findByLabelText(/Served at/);
    fireEvent.input(field, { target: { value: "−10,5" } });
    await screen.findByText(/−10.5 °C/);
    expectShown(cellsOf(english.cold.iceOfMix)[0], numberOf("ICEFRACTION", -10.5, "mix"));
    fireEvent.input(field, { target: { value: "cold" } });
    expect(screen.getByText(/must be a number from −?-?60 to 40 °C, not “cold”/)).toBeTruthy();
  });

  test("says what it took for what", async () => {
    open({ Ices: sorbet() }, "A3");
    expect(await screen.findByText("2 ingredients: names A3:A4, amounts B3:B4")).toBeTruthy();
    expect(screen.getByText("g, as the header says")).toBeTruthy();
  });

  test("follows the selection to another recipe, unless it is to be kept", async () => {
    const salty = [
      ["Ingredient", "g"],
      ["water", 100],
      ["sodium chloride", 5],
    ];
    const { select } = open({ Ices: sorbet(), Other: salty }, "A3");
    await screen.findByText("Sharp lemon ice");
    select("A1", "Other");
    expect(await screen.findByText("Other!A1:B3")).toBeTruthy();
    select("A3", "Ices");
    await screen.findByText("Sharp lemon ice");
    fireEvent.click(screen.getByText("Keep"));
    select("A1", "Other");
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(screen.getByText("Sharp lemon ice")).toBeTruthy();
  });

  test("kilograms and cups become grams by RIME.GRAMS", async () => {
    const cups = [
      ["Ingredient", "Amount", "Unit"],
      ["water", 0.25, "kg"],
      ["sucrose", 70, "g"],
    ];
    open({ Ices: cups }, "A2");
    await screen.findByText(/per cent|each row’s own/);
    const [written] = headline().replace("−", "-").split(/\s/);
    expect(Number(written)).toBeCloseTo(numberOf("FREEZINGPOINT"), 1);
  });

  test("German writes a decimal comma", async () => {
    open({ Eise: sorbet() }, "A3", { language: "de" });
    await waitFor(() => expect(headline()).toMatch(/^−\d,\d+\s±\s\d,\d+/));
  });

  test("the curve has a description and a table behind it", async () => {
    open({ Ices: sorbet() }, "A3");
    const picture = await screen.findByRole("img");
    expect(picture.getAttribute("aria-label")).toMatch(/At −14\s°C: \d+\u202f%/);
    expect(screen.getByText("The curve as a table")).toBeTruthy();
  });
});

describe("what the functions refuse", () => {
  test("an unknown name shows the function's own sentence and the way to the cell", async () => {
    const { visited } = open(
      {
        Ices: [
          ["Ingredient", "g"],
          ["water", 250],
          ["sucrose", 70],
          ["sucrosse", 5],
        ],
      },
      "A2",
    );
    const answer = callFunction(
      "FREEZINGPOINT",
      [["water"], ["sucrose"], ["sucrosse"]],
      [[250], [70], [5]],
    )[0]![0];
    if (!isProblem(answer)) throw new Error("was expected to be refused");
    expect(await screen.findByText(answer.message)).toBeTruthy();
    fireEvent.click(screen.getByText("A4 sucrosse"));
    await waitFor(() => expect(visited).toEqual(["Ices!A4"]));
  });

  test("a text instead of a number shows the function's own sentence and the way to that amount", async () => {
    const { visited } = open(
      {
        Ices: [
          ["Zutat", "Menge (g)"],
          ["Wasser", "250,5"],
          ["sucrose", 70],
        ],
      },
      "A2",
    );
    fireEvent.click(await screen.findByText("B2 250,5"));
    expect(screen.getByText(/grams.*250,5/)).toBeTruthy();
    expect(headline()).toBe("");
    await waitFor(() => expect(visited).toEqual(["Ices!B2"]));
  });

  test("honey alone has no freezing point, and that is said instead of a number", async () => {
    open(
      {
        Ices: [
          ["Ingredient", "g"],
          ["honey", 100],
        ],
      },
      "A2",
    );
    await waitFor(() => {
      expect(document.querySelector(".headline-sentence")?.textContent).toMatch(/ice/i);
    });
  });
});

describe("what has to be asked", () => {
  test("which of two columns of grams is meant; then it reads that, and can be asked again", async () => {
    const two = [
      ["Ingredient", "Mild (g)", "Sharp (g)"],
      ["water", 250, 250],
      ["sucrose", 70, 90],
    ];
    open({ Ices: two }, "A2");
    fireEvent.change(await screen.findByLabelText("Amounts are in"), { target: { value: "2" } });
    fireEvent.click(screen.getByText("Read it so"));
    expect(await screen.findByText("Sharp")).toBeTruthy();
    fireEvent.click(screen.getByText("Ask me again"));
    expect(await screen.findByText("Read it so")).toBeTruthy();
  });

  test("an empty cell is said to be empty", async () => {
    open({ Ices: [[""]] }, "A1");
    expect(await screen.findByText(/Ices!A1 is empty/)).toBeTruthy();
  });
});

describe("own ingredients", () => {
  const book = (): Record<string, BlockValue[][]> => ({
    Ices: [
      ["Ingredient", "g"],
      ["water", 250],
      ["house syrup", 100],
    ],
    Pantry: [
      ["name", "water", "sucrose"],
      ["house syrup", 40, 60],
    ],
  });

  test("are found by their header and count", async () => {
    open(book(), "A2");
    const own = [
      ["name", "water", "sucrose"],
      ["house syrup", 40, 60],
    ];
    const alone = callFunction("FREEZINGPOINT", [["water"], ["house syrup"]], [[250], [100]], own);
    await waitFor(() => expect(headline()).not.toBe(""));
    const [written] = headline().replace("−", "-").split(/\s/);
    expect(Number(written)).toBeCloseTo(alone[0]![0] as number, 1);
    expect(screen.getByLabelText<HTMLSelectElement>("Own ingredients").value).toBe("Pantry!A1:C2");
  });

  test("can be left out, and then the name is not known", async () => {
    open(book(), "A2");
    await waitFor(() => expect(headline()).not.toBe(""));
    fireEvent.change(screen.getByLabelText("Own ingredients"), { target: { value: "" } });
    await waitFor(() => expect(headline()).toBe(""));
    expect(screen.getByText(/house syrup/, { selector: ".notice-text" })).toBeTruthy();
  });
});

describe("own ingredients whose place is gone", () => {
  const pantry = (water: number): BlockValue[][] => [
    ["name", "water", "sucrose"],
    ["house syrup", water, 100 - water],
  ];
  const ices = (): BlockValue[][] => [
    ["Ingredient", "g"],
    ["water", 250],
    ["house syrup", 100],
  ];
  const pointWith = (own: BlockValue[][]) =>
    callFunction("FREEZINGPOINT", [["water"], ["house syrup"]], [[250], [100]], own)[0]![0];
  const expectPoint = (own: BlockValue[][]) =>
    waitFor(() => {
      const [written] = headline().replace("−", "-").split(/\s/);
      expect(Number(written)).toBeCloseTo(pointWith(own) as number, 1);
    });
  const choice = () => screen.getByLabelText<HTMLSelectElement>("Own ingredients");

  test("another workbook: the first of its own is taken, and said", async () => {
    const { sheets, select, said } = open({ Ices: ices(), Pantry: pantry(40) }, "A2");
    await expectPoint(pantry(40));
    delete sheets["Pantry"];
    sheets["Larder"] = pantry(10);
    select("A3");
    await expectPoint(pantry(10));
    const sentence =
      "Own ingredients are no longer in Pantry!A1:C2: those in Larder!A1:C2 count now.";
    expect(said).toContain(sentence);
    expect(screen.getByText(sentence)).toBeTruthy();
    expect(choice().value).toBe("Larder!A1:C2");
    expect(screen.queryByText(english.hostFaults.ItemNotFound)).toBeNull();
  });

  test("a sheet of the same name that holds something else is not taken for them", async () => {
    const { sheets, select, said } = open({ Ices: ices(), Pantry: pantry(40) }, "A2");
    await expectPoint(pantry(40));
    sheets["Pantry"] = [
      ["Shelf", "Jar"],
      ["upper", 3],
    ];
    select("A3");
    await waitFor(() => expect(choice().value).toBe(""));
    expect(said).toContain("Own ingredients are no longer in Pantry!A1:C2: none count now.");
  });

  test("a range chosen by hand is kept while its sheet is there, and its loss is said", async () => {
    const plain: BlockValue[][] = [...pantry(20)];
    const { sheets, select, said } = open({ Ices: ices(), Pantry: pantry(40), Mine: plain }, "A2");
    await expectPoint(pantry(40));
    fireEvent.change(choice(), { target: { value: "Mine!A1:C2" } });
    await expectPoint(pantry(20));
    plain[0] = ["Name of mine", "water", "sucrose"];
    select("A3");
    // That its header is not understood is said by the functions; water is water all the same.
    await screen.findByText(/no header "name"/, { selector: ".notice-text" });
    expect(screen.queryByText(english.troubleAt)).toBeNull();
    expect(choice().value).toBe("Mine!A1:C2");
    delete sheets["Mine"];
    select("A2");
    await expectPoint(pantry(40));
    expect(said).toContain(
      "Own ingredients are no longer in Mine!A1:C2: those in Pantry!A1:C2 count now.",
    );
  });

  test("a recipe that was kept and is gone lets the selection be followed again", async () => {
    const { sheets, select, said } = open(
      { Ices: ices(), Other: sorbet(), Pantry: pantry(40) },
      "A2",
    );
    await expectPoint(pantry(40));
    fireEvent.click(screen.getByText(english.keep));
    delete sheets["Ices"];
    select("A3", "Other");
    await screen.findByText("Sharp lemon ice");
    expect(said).toContain(english.keptGone("Ices!A1:B3"));
    expect(screen.getByText(english.keep).getAttribute("aria-pressed")).toBe("false");
  });
});

describe("what to tell the eater", () => {
  test("honey, allergens, and ingredients of which nothing is known", async () => {
    const ice = [
      ["Ingredient", "g"],
      ["whole milk", 250],
      ["honey, average", 60],
      ["pistachios", 20],
      ["syrup X", 5],
    ];
    open(
      {
        Ices: ice,
        Pantry: [
          ["name", "water", "sucrose"],
          ["syrup X", 40, 60],
        ],
      },
      "A2",
    );
    expect(await screen.findByText(/not for children under 12 months/)).toBeTruthy();
    const allergens = screen.getAllByText("milk").map((one) => one.closest("li")?.textContent);
    expect(allergens).toContain("milk: whole milk");
    expect(screen.getByText("tree nuts").closest("li")?.textContent).toContain("pistachios");
    expect(screen.getByText("Allergens unknown: syrup X. Read the labels.")).toBeTruthy();
  });

  test("a plain name that stands for one of the catalogue keeps its allergens", async () => {
    const ice = [
      ["Ingredient", "g"],
      ["Our milk", 250],
      ["sucrose", 40],
    ];
    open(
      {
        Ices: ice,
        Pantry: [
          ["name", "same as"],
          ["Our milk", "whole milk"],
        ],
      },
      "A2",
    );
    expect((await screen.findByText("milk")).closest("li")?.textContent).toBe("milk: Our milk");
    expect(screen.queryByText(/unknown/)).toBeNull();
  });
});

describe("formulas into the sheet", () => {
  test("the recipe stays while another cell is chosen, and the formula names its ranges", async () => {
    const { select, sheets } = open({ "My ices": sorbet() }, "A3");
    fireEvent.click(await screen.findByText("Put a formula in the sheet…"));
    await shown("My ices!A3");
    select("D9");
    await shown("My ices!D9");
    expect(screen.getByText("Sharp lemon ice")).toBeTruthy();
    fireEvent.click(screen.getByText("Write"));
    await waitFor(() => expect(sheets["My ices"]![8]?.[3]).toBeDefined());
    expect(sheets["My ices"]![8]![3]).toBe("=RIME.FREEZINGPOINT('My ices'!A3:A4,'My ices'!B3:B4)");
  });
});

describe("faults of the host", () => {
  test.each(["GeneralException", "InvalidSelection", "InvalidOperationInCellEditMode"])(
    "%s while reading ends in one sentence",
    async (code) => {
      const fake = fakeHost({ Ices: sorbet() }, "A3");
      fake.faults.readSelection = Object.assign(new Error(code), { code });
      const { context, said } = paneContext(fake.host);
      render(<Bowl context={context} active />);
      const sentence = english.hostFaults[code as keyof typeof english.hostFaults];
      expect(await screen.findByText(sentence)).toBeTruthy();
      expect(said).toContain(sentence);
    },
  );
});
