import { fireEvent, screen, waitFor, within } from "@testing-library/preact";
import type { BlockValue } from "../../../taskpane/host";
import { english } from "../../../taskpane/words/english";
import { cellOf, column, numberOf } from "../../worksheet/ask";
import {
  texts,
  NAMES,
  open,
  ready,
  wishFor,
  addWish,
  type,
  press,
  newGrams,
  notice,
  SCOOPED,
} from "../steer/steerPane";

// What is shown and written is held against what the worksheet functions answer for the new amounts.

describe("a serving target", () => {
  test("is reached by an answer that RIME.CHECK says meets it, the mass kept, in whole grams", async () => {
    const { said } = open();
    await ready();
    wishFor(SCOOPED.name);
    press(texts.find);
    expect(notice()).toBe(texts.checked);
    const grams = newGrams();
    expect(cellOf("CHECK", column(NAMES), column(grams), SCOOPED.name)).toBe(
      `meets ${SCOOPED.name}`,
    );
    expect(grams.every(Number.isInteger)).toBe(true);
    expect(grams.reduce((sum, one) => sum + one, 0)).toBe(952);
    expect(said).toContain(texts.checked);
  });

  test("salt is left alone unless it is ticked", async () => {
    open();
    await ready();
    expect(screen.getByLabelText<HTMLInputElement>(/^salt \d/).checked).toBe(false);
    expect(screen.getByLabelText<HTMLInputElement>(/^sucrose \d/).checked).toBe(true);
    wishFor(SCOOPED.name);
    press(texts.find);
    expect(newGrams()[3]).toBe(2);
  });

  test("glycerol and alcohol are never proposed unasked, even where they are in the recipe", async () => {
    open({
      Ices: [
        ["Ingredient", "g"],
        ["water", 650],
        ["sucrose", 150],
        ["glycerol", 40],
        ["spirit 40 % vol", 40],
      ],
    });
    await ready();
    for (const name of [/^glycerol \d/, /^spirit 40 % vol \d/]) {
      expect(screen.getByLabelText<HTMLInputElement>(name).checked).toBe(false);
    }
    wishFor(SCOOPED.name);
    press(texts.find);
    expect(newGrams().slice(2)).toEqual([40, 40]);
  });

  test("figures before and after are those of the functions", async () => {
    open();
    await ready();
    wishFor(SCOOPED.name);
    press(texts.find);
    const figures = document.querySelectorAll(".steer-table")[1]!;
    const [point] = figures.querySelectorAll("tbody tr");
    const [before, after] = [...point!.querySelectorAll("td")].map((cell) =>
      Number(cell.textContent.replace("−", "-").split(/\s/)[0]),
    );
    const pointOf = (grams: readonly number[]) =>
      numberOf("FREEZINGPOINT", column(NAMES), column(grams));
    expect(before).toBeCloseTo(pointOf([650, 150, 150, 2]), 1);
    expect(after).toBeCloseTo(pointOf(newGrams()), 1);
    expect(point!.textContent).toContain("±");
  });

  test("a recipe that meets it already is told so", async () => {
    open({
      Ices: [
        ["Ingredient", "g"],
        ["water", 720],
        ["sucrose", 280],
      ],
    });
    await ready();
    wishFor(SCOOPED.name);
    press(texts.find);
    expect(notice()).toBe(texts.unchanged);
    expect(screen.queryByText(texts.place)).toBeNull();
  });
});

describe("wishes that are added", () => {
  test("take a decimal comma", async () => {
    open();
    await ready();
    addWish("point");
    type(texts.ofItem(texts.from, texts.wishes.point), "−2,6");
    type(texts.ofItem(texts.to, texts.wishes.point), "−2,4");
    press(texts.find);
    const point = numberOf("FREEZINGPOINT", column(NAMES), column(newGrams()));
    expect(point).toBeGreaterThanOrEqual(-2.6);
    expect(point).toBeLessThanOrEqual(-2.4);
  });

  test("what is no number is said, with the wish it belongs to", async () => {
    const { said } = open();
    await ready();
    addWish("sweetness");
    type(texts.ofItem(texts.to, texts.wishes.sweetness), "much");
    press(texts.find);
    const sentence = texts.notANumber(texts.names.sweetness, "much");
    expect(screen.getByText(sentence)).toBeTruthy();
    expect(said).toContain(sentence);
  });

  test("the one that stands in the way is named with the nearest value, in one sentence", async () => {
    open();
    await ready();
    addWish("fat");
    type(texts.ofItem(texts.from, texts.wishes.fat), "5");
    press(texts.find);
    expect(notice()).toMatch(/^“Fat” stands in the way: at least 5.0.g per 100 g/);
    expect(document.querySelector(".steer-table")).toBeNull();
  });

  test("an ingredient let in by name opens the way, and is written with its name beside its grams", async () => {
    const { sheets } = open();
    await ready();
    addWish("fat");
    type(texts.ofItem(texts.from, texts.wishes.fat), "5");
    type(texts.addItem, "cream 35 % fat");
    fireEvent.submit(screen.getByText(texts.addItemButton).closest("form")!);
    press(texts.find);
    expect(newGrams()[4]).toBeGreaterThan(100);
    press(texts.place);
    press((await screen.findByText(texts.write)).textContent);
    await waitFor(() => expect(JSON.stringify(sheets["Ices"])).toContain("cream 35 % fat"));
    const row = sheets["Ices"]!.find((cells) => cells.includes("cream 35 % fat"))!;
    const at = row.indexOf("cream 35 % fat");
    expect(at).toBeGreaterThan(2); // apart from the table: a free column lies between
    expect(row[at + 1]).toBe(newGrams()[4]);
  });

  test("an unknown name is not let in", async () => {
    open();
    await ready();
    type(texts.addItem, "moonstone");
    fireEvent.submit(screen.getByText(texts.addItemButton).closest("form")!);
    expect(screen.getByText(texts.unknownItem("moonstone"))).toBeTruthy();
  });

  test("limits hold, and a wrong one is named", async () => {
    open();
    await ready();
    addWish("sweetness");
    type(texts.ofItem(texts.from, texts.wishes.sweetness), "20");
    type(texts.ofItem(texts.to, "sucrose"), "160");
    press(texts.find);
    expect(notice()).toContain("stands in the way");
    type(texts.ofItem(texts.to, "sucrose"), "a lot");
    press(texts.find);
    expect(screen.getByText(texts.notAGram("sucrose", "a lot"))).toBeTruthy();
  });
});

describe("cost", () => {
  const priced = (): BlockValue[][] => [
    ["Ingredient", "Amount (g)", "Price per kg"],
    ["water", 500, 0],
    ["sucrose", 250, 1.5],
    ["lemon juice", 250, 6],
  ];

  test("takes the prices of a column whose header says per kg", async () => {
    open({ Ices: priced() });
    await ready();
    addWish("cost");
    type(texts.ofItem(texts.to, texts.wishes.cost), "1.5");
    await waitFor(() =>
      expect(
        screen.getByLabelText<HTMLInputElement>(texts.ofItem(texts.price, "lemon juice")).value,
      ).toBe("6"),
    );
    press(texts.find);
    const [, sucrose, juice] = newGrams() as [number, number, number];
    expect((sucrose * 1.5 + juice * 6) / 1000).toBeLessThanOrEqual(1.5);
  });

  test("asks for prices where there is no such column", async () => {
    open();
    await ready();
    addWish("cost");
    type(texts.ofItem(texts.to, texts.wishes.cost), "1");
    expect(screen.getByText(new RegExp(texts.noPrices.slice(0, 20)))).toBeTruthy();
    press(texts.find);
    expect(notice()).toMatch(/"water" has no price/);
  });
});

describe("what cannot be steered", () => {
  test("a glycol in the recipe is refused in the function's words", async () => {
    open({
      Ices: [
        ["Ingredient", "g"],
        ["water", 800],
        ["sucrose", 100],
        ["propylene glycol", 100],
      ],
    });
    await ready();
    wishFor(SCOOPED.name);
    press(texts.find);
    expect(notice()).toMatch(/"propylene glycol" is not a food/);
  });

  test("no wish at all is said", async () => {
    open();
    await ready();
    press(texts.find);
    expect(screen.getByText(texts.noWish)).toBeTruthy();
  });

  test("an empty sheet says so, in German too", async () => {
    open({ Leer: [["", ""]] }, "A1", "de");
    expect(await screen.findByText(/Leer!A1/)).toBeTruthy();
  });
});

test("several ways are offered as radio buttons, each with its own table", async () => {
  open({
    Ices: [
      ["Ingredient", "g"],
      ["water", 100],
      ["whole milk", 450],
      ["cream 35 % fat", 200],
      ["sucrose", 120],
      ["glucose", 40],
      ["skim milk powder", 40],
    ],
  });
  await ready();
  addWish("fat");
  type(texts.ofItem(texts.from, texts.wishes.fat), "10");
  addWish("sweetness");
  type(texts.ofItem(texts.from, texts.wishes.sweetness), "17");
  press(texts.find);
  const ways = within(screen.getByRole("group", { name: texts.waysTitle }));
  const radios = ways.getAllByRole<HTMLInputElement>("radio");
  expect(radios.length).toBeGreaterThan(1);
  const before = newGrams();
  fireEvent.click(radios[1]!);
  expect(newGrams()).not.toEqual(before);
  expect(notice()).not.toBe("");
});

test("which own ingredients count can be chosen here too, and no others are steered with", async () => {
  open({
    Ices: [
      ["Ingredient", "g"],
      ["water", 700],
      ["stall syrup", 300],
    ],
    Own: [
      ["name", "water", "sucrose"],
      ["stall syrup", 35, 65],
    ],
  });
  await ready();
  const choice = screen.getByLabelText<HTMLSelectElement>(english.own.label);
  expect(choice.value).toBe("Own!A1:C2");
  fireEvent.change(choice, { target: { value: "" } });
  expect(await screen.findByText(/"stall syrup"/)).toBeTruthy();
  fireEvent.change(screen.getByLabelText(english.own.label), { target: { value: "Own!A1:C2" } });
  await ready();
});
