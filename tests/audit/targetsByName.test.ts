import { formula, type Rows } from "./bookOf";
import { rulesOn } from "./tried";

/** A board of two mixes of another sheet, under a heading that does not say that it is about targets. */
const board = (first: string, second: string): Readonly<Record<string, Rows>> => ({
  Board: [
    ["On the board", "Freezes °C", "Comes out as"],
    ["Syrup ice", formula("RIME.FREEZINGPOINT(Mixes!A2:A3,Mixes!B2:B3)", -2.66), first],
    ["Water ice", formula("RIME.FREEZINGPOINT(Mixes!A6:A7,Mixes!B6:B7)", -0.58), second],
  ],
  Mixes: [
    ["Goes in", "g"],
    ["water", 700],
    ["sucrose", 300],
    [],
    ["Goes in", "g"],
    ["water", 900],
    ["sucrose", 90],
  ],
});

/** The same board with a column for each mix. */
function turned(first: string, second: string): Readonly<Record<string, Rows>> {
  const { Board: [heading = [], ...lines] = [], ...others } = board(first, second);
  return {
    Board: heading.map((label, at) => [label, ...lines.map((line) => line[at] ?? null)]),
    ...others,
  };
}

test.each([board, turned])(
  "a target named with its temperature is one whatever heads it, and so are those in its line",
  (board) => {
    expect(rulesOn(board("scooped at −13", "firm bar at −18"))).toContain("misses-its-target");
    expect(rulesOn(board("drinkable slush", "scraped granita"))).not.toContain("misses-its-target");
    expect(rulesOn(board("scooped at −13", "drinkable slush"))).toContain("misses-its-target");
  },
);

/** A list below what it is to be, on a sheet of its own. */
const under = (label: string): Readonly<Record<string, Rows>> => ({
  Today: [[label, "scraped granita"], [], ["Goes in", "g"], ["water", 700], ["sucrose", 300]],
});

test.each(["Release as", "Ausgabe als:", "Goes out as", "Lernziel:"])(
  "what is said of a list above it is its target: %s",
  (label) => {
    expect(rulesOn(under(label))).toContain("misses-its-target");
  },
);

test.each(["Known as", "Comes out as", "Verpackt als", "Title"])(
  "its name and its box are none: %s",
  (label) => {
    expect(rulesOn(under(label))).not.toContain("misses-its-target");
  },
);

/** Two lists side by side with words alone below their answers. */
const sideBySide = (second: string): Readonly<Record<string, Rows>> => ({
  Nights: [
    ["g", "what goes in", null, "g", "what goes in"],
    [700, "water", null, 700, "water"],
    [300, "sucrose", null, 300, "sucrose"],
    [],
    [-2.66, "°C, first ice appears", null, -2.66, "°C, first ice appears"],
    [null, "scraped granita", null, null, second],
  ],
});

test("beside another list's target that tells its temperature, words without a label are one", () => {
  const missed = (second: string) =>
    rulesOn(sideBySide(second)).filter((rule) => rule === "misses-its-target").length;
  expect([missed("firm bar at −18"), missed("stone plates")]).toEqual([1, 0]);
});

/** A page of answers, with what its mix is to be below a blank row. */
const page = (grams: number): Readonly<Record<string, Rows>> => ({
  Mix: [
    ["Raw material", "10 kg formula (kg)"],
    ["water", 10 - grams],
    ["sucrose", grams],
  ],
  Page: [
    ["By calculation", "Value"],
    ["Freezes at, °C", formula("RIME.FREEZINGPOINT(Mix!A2:A3,Mix!B2:B3)", -2.66)],
    [],
    ["Release as", "scraped granita"],
  ],
});

test("below a blank row a target is that of the mix that all formulas of its column read", () => {
  expect(rulesOn(page(3))).toContain("misses-its-target");
  expect(rulesOn(page(1.6))).not.toContain("misses-its-target");
});
