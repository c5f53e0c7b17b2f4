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

test("a target named with its temperature is one whatever heads it, and so are those in its column", () => {
  expect(rulesOn(board("scooped at −13", "firm bar at −18"))).toContain("misses-its-target");
  expect(rulesOn(board("drinkable slush", "scraped granita"))).not.toContain("misses-its-target");
  expect(rulesOn(board("scooped at −13", "drinkable slush"))).toContain("misses-its-target");
});
