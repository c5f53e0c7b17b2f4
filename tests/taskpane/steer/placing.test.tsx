import { fireEvent, screen, waitFor } from "@testing-library/preact";
import type { BlockValue } from "../../../taskpane/host";
import { STAND_INS } from "../../../taskpane/steer/Exchange";
import { english } from "../../../taskpane/words/english";
import { german } from "../../../taskpane/words/german";
import { column, numberOf } from "../../worksheet/ask";
import {
  texts,
  NAMES,
  sorbet,
  open,
  ready,
  wishFor,
  press,
  rows,
  newGrams,
  SCOOPED,
} from "./steerPane";

// What is shown and written is held against what the worksheet functions answer for the new amounts.

describe("the new column", () => {
  async function placed(sheets: Record<string, BlockValue[][]>, select = "B4") {
    const opened = open(sheets, select);
    await ready();
    wishFor(SCOOPED.name);
    press(texts.find);
    press(texts.place);
    return opened;
  }

  test("is previewed, goes beside the table with a header and its own sum, and the old stays", async () => {
    const { sheets, said } = await placed({ Ices: sorbet() });
    expect(await screen.findByText("Ices!C2:C7")).toBeTruthy();
    expect(screen.getByText("Amount (g) adjusted")).toBeTruthy();
    press(texts.write);
    await waitFor(() => expect(sheets["Ices"]![1]![2]).toBe("Amount (g) adjusted"));
    expect(sheets["Ices"]!.slice(2, 6).map((row) => row[2])).toEqual(newGrams());
    expect(sheets["Ices"]![6]![2]).toBe("=SUM(C3:C6)");
    expect(sheets["Ices"]!.map((row) => row.slice(0, 2))).toEqual(sorbet());
    expect(said).toContain(texts.written("Ices!C2:C7"));
  });

  test("does not join another table on: it stands apart, with its own names", async () => {
    const crowded = sorbet().map((row, at) => [...row, "", at === 3 ? "a note" : ""]);
    const { sheets } = await placed({ Ices: crowded });
    press((await screen.findByText(texts.write)).textContent);
    await waitFor(() => expect(JSON.stringify(sheets["Ices"])).toContain("adjusted"));
    const [, , water] = sheets["Ices"]!;
    const at = water!.indexOf("water", 1);
    expect(at).toBeGreaterThan(4);
    expect(water![at + 1]).toBe(newGrams()[0]);
    expect(sheets["Ices"]![3]![3]).toBe("a note");
  });

  test("a recipe that is a row gets a row of its own", async () => {
    const across: BlockValue[][] = [
      ["Recipe", "water", "sucrose", "lemon juice"],
      ["Lemon ice", 650, 150, 150],
      ["Sour ice", 650, 120, 200],
    ];
    const { sheets } = await placed({ Ices: across }, "B2");
    press((await screen.findByText(texts.write)).textContent);
    await waitFor(() => expect(sheets["Ices"]![3]).toBeDefined());
    expect(sheets["Ices"]![3]).toEqual(["Lemon ice adjusted", ...newGrams()]);
  });

  test("cells filled meanwhile are left alone, and that is said", async () => {
    const { sheets } = await placed({ Ices: sorbet() });
    await screen.findByText("Ices!C2:C7");
    sheets["Ices"]![4]![2] = 7;
    press(texts.write);
    expect(await screen.findByText(english.insert.changed("Ices!C2:C7"))).toBeTruthy();
    expect(sheets["Ices"]![4]![2]).toBe(7);
    expect(sheets["Ices"]![2]![2]).toBeUndefined();
  });

  test("Esc closes the preview and nothing is written", async () => {
    const { sheets } = await placed({ Ices: sorbet() });
    fireEvent.keyDown(await screen.findByText(texts.write), { key: "Escape" });
    expect(screen.queryByText(texts.write)).toBeNull();
    expect(sheets["Ices"]).toEqual(sorbet());
  });

  test("a fault of the spreadsheet ends in its sentence", async () => {
    const { faults } = await placed({ Ices: sorbet() });
    const button = await screen.findByText(texts.write);
    faults.insert = Object.assign(new Error("x"), { code: "AccessDenied" });
    fireEvent.click(button);
    expect(await screen.findByText(english.hostFaults.AccessDenied)).toBeTruthy();
  });
});

describe("an exchange", () => {
  test("keeps ice and mass, and says what it keeps", async () => {
    open();
    await ready();
    press(texts.exchange);
    const grams = newGrams();
    const names = rows().map((row) => row.querySelector("th")!.textContent);
    expect(names.at(-1)).toBe(STAND_INS[0]);
    expect(grams[1]).toBe(0);
    const ice = (items: readonly string[], amounts: readonly number[]) =>
      numberOf("ICEFRACTION", column(items), column(amounts), -14);
    // In whole grams: half a gram of dextrose in 950 g moves the share of ice by 0.0005.
    expect(ice(names, grams)).toBeCloseTo(ice(NAMES, [650, 150, 150, 2]), 2);
    expect(grams.reduce((sum, one) => sum + one, 0)).toBeCloseTo(952, 0);
  });

  test("in German the stand-in has its German name, which the functions know", async () => {
    const { sheets } = open(
      {
        Eis: [
          ["Zutat", "Menge (g)"],
          ["Wasser", 700],
          ["Zucker", 300],
        ],
      },
      "A2",
      "de",
    );
    const words = german.steer;
    fireEvent.click(await screen.findByText(words.exchange));
    const names = rows().map((row) => row.querySelector("th")!.textContent);
    expect(numberOf("COMPONENT", names.at(-1), 1, "glucose")).toBeGreaterThan(0.9);
    fireEvent.click(screen.getByText(words.place));
    fireEvent.click(await screen.findByText(words.write));
    await waitFor(() => expect(JSON.stringify(sheets["Eis"])).toContain(names.at(-1)));
  });

  test("every stand-in is known, and none of them is glycerol or a glycol", () => {
    for (const name of STAND_INS) {
      expect(numberOf("COMPONENT", name, 1, "total")).toBe(1);
      expect(numberOf("COMPONENT", name, 1, "glycerol")).toBe(0);
      expect(numberOf("COMPONENT", name, 1, "propylene glycol")).toBe(0);
    }
  });
});
