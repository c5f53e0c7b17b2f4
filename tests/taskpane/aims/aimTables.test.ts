import fc from "fast-check";
import type { Matrix } from "../../../src/foundation/cell";
import { callFunction } from "../../../src/worksheet/callFunction";
import { sheetFromRows } from "../../../src/workbook/sheetFromRows";
import { aimArgument, checkFormula } from "../../../taskpane/aims/aimArgument";
import { ownAim } from "../../../taskpane/aims/aim";
import { allAims, aimNamed, NO_AIMS, ownAims } from "../../../taskpane/aims/aimStore";
import { aimRows, findAimTables } from "../../../taskpane/aims/aimTables";
import { english } from "../../../taskpane/words/english";
import { german } from "../../../taskpane/words/german";

const cells: Matrix = [
  ["Name", "Note", "Temperature (°C)", "ice from", "ice to"],
  ["my bar", "for the stall", -16, 0.3, 0.5],
  ["my pop", null, -15, 0.6, 0.4],
  ["my sorbet", "", -12, 0.5, 0.7],
];
const table = { sheet: "My aims", address: "B2:F5", cells };

describe("a table of targets on a sheet", () => {
  test("is found wherever it stands, and nothing else is", () => {
    const rows = [[], ...cells.map((row) => ["", ...row.map((cell) => cell ?? "")])];
    const book = {
      sheets: [
        sheetFromRows("My aims", rows as never),
        sheetFromRows("Own", [
          ["name", "water"],
          ["syrup", 30],
        ]),
        sheetFromRows("Weather", [
          ["name", "temperature"],
          ["Monday", 3],
        ]),
      ],
      names: [],
      calculation: "automatic" as const,
      externalLinks: [],
    };
    expect(findAimTables(book)).toEqual([{ sheet: "My aims", address: "B2:F5" }]);
  });

  test("gives the targets that RIME.CHECK takes, and its sentence for the one it refuses", () => {
    const [bar, pop, sorbet] = aimRows(table);
    expect(bar).toMatchObject({ name: "my bar", temperatureC: -16, basis: "water", iceTo: 0.5 });
    expect(pop).toEqual({ refused: expect.stringMatching(/0.4 is less than ice from, 0.6/) });
    expect(sorbet).toMatchObject({ place: { sheet: "My aims", address: "B2:F5", row: 3 } });
  });

  test("the pane's answer is the cell's, row by row", () => {
    const [bar, , sorbet] = aimRows(table);
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 600 }), (sugar) => {
        const mix = [
          [["water"], ["sucrose"]],
          [[700], [sugar]],
        ];
        const inCells = callFunction("CHECK", ...mix, cells);
        for (const [aim, row] of [
          [bar!, 0],
          [sorbet!, 2],
        ] as const) {
          if ("refused" in aim) throw new Error(aim.refused);
          expect(callFunction("CHECK", ...mix, aimArgument(aim))[0]).toEqual(inCells[row]);
        }
      }),
      { numRuns: 25 },
    );
  });

  test("a cell's formula picks the row of the table; one not kept is written out", () => {
    const call = (target: string) => `RIME.CHECK(A1:A2,B1:B2,${target})`;
    const sorbet = aimRows(table)[2]!;
    if ("refused" in sorbet) throw new Error(sorbet.refused);
    expect(checkFormula(sorbet, call)).toBe("INDEX(RIME.CHECK(A1:A2,B1:B2,'My aims'!B2:F5),3)");
    expect(checkFormula(ownAim({ ...sorbet, name: 'a "b"', note: "" }, null), call)).toBe(
      'RIME.CHECK(A1:A2,B1:B2,{"name","temperature","ice from","ice to","basis","note";"a ""b""",-12,0.5,0.7,"water",""})',
    );
  });
});

describe("which target a name means", () => {
  const body = { temperatureC: -9, iceFrom: 0.2, iceTo: 0.3, basis: "water" as const, note: "" };
  const state = {
    ...NO_AIMS,
    tables: [table],
    unkept: [
      { ...body, name: "Scooped at −13" },
      { ...body, name: "MY BAR" },
      { ...body, name: "my slush" },
    ],
  };
  test("the catalogue's names stay the catalogue's, of two alike the first counts", () => {
    expect(ownAims(state).map(({ name }) => name)).toEqual(["my bar", "my sorbet", "my slush"]);
    expect(aimNamed(allAims(state, english), "scooped at −13")?.obtained).toBe("common practice");
    expect(aimNamed(allAims(state, english), "My Bar")?.temperatureC).toBe(-16);
  });
  test("in German too, by the German name", () => {
    expect(aimNamed(allAims(state, german), "Kugeln bei −13")?.label).toBe("Kugeln bei −13");
    expect(aimNamed(allAims(state, german), "nirgends")).toBeNull();
  });
});
