import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { hundred } from "../layouts/marking";
import { sumOf } from "../layouts/parts";
import { itemsOf } from "../strollers/words";
import { solution } from "../solution";
import { FRIENDLY, rowsAt, thermometer } from "./words";

const FACTS: readonly Fact[] = [
  ["Freezing point in °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Water in 100 g, g", { states: "water", as: "typed", decimals: 1 }],
  [
    "How much of the water is ice at −18 °C, in %",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

const TEAMS = ["Penguins", "Walruses", "Polar bears"];

/** What three teams made, a column each, in per cent. */
function teams(kit: Kit, sheet: CorpusSheet): void {
  const mades = kit.make(3).map(hundred);
  put(sheet, 0, 0, "Year 9 cooking meets science: what did each team freeze?");
  putRow(sheet, 2, 2, TEAMS);
  putRow(
    sheet,
    3,
    2,
    mades.map(({ title }) => title),
  );
  const amountLabel = put(sheet, 4, 2, "% of the mix by weight");
  const items = itemsOf(mades).map((item, index) => put(sheet, 5 + index, 1, item));
  const end = 5 + items.length;
  put(sheet, end, 1, "Comes to");
  putRow(sheet, end + 5, 1, ["Aim"]);
  putRow(sheet, end + 6, 1, ["Before anyone eats"]);
  mades.forEach((made, index) => {
    const plan = { items, left: 2, unit: "%", format: "0.0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    const column = 2 + index;
    factsDown(sheet, recipe, FACTS, { row: end + 2, column, labels: 1, items });
    nameTarget(sheet, recipe, { row: end + 5, column });
    tellIn(sheet, recipe, { row: end + 6, column }, FRIENDLY);
  });
  note(kit, sheet, end + 8, 1, "Aprons back in the blue box, please");
}

/** The class's own sum, with the minutes and readings of the freezing at its right. */
function brine(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Do it with a calculator first, then check here");
  solution(kit, sheet, {
    ...{ top: 2, left: 0, count: 2 },
    headings: ["Stirred in", "grams", "grams in a mole", "bits it splits into", "moles of bits"],
    words: {
      water: ["Water in the beaker (g)", "Water in the beaker"],
      constant: "Water's Kf (K kg/mol)",
      depression: "Drop in freezing point (K)",
      freezingPoint: "New freezing point (°C)",
      proviso: (gap) => `The formula is for ideal solutions: ours may be out by ${gap} K.`,
    },
  });
  put(sheet, 2, 6, "minute");
  [0, 2, 4, 6, 8].forEach((minute, index) => put(sheet, 3 + index, 6, minute));
  const plan = { heading: "ice bath (°C)", count: 5, range: [-15, -9] } as const;
  thermometer(kit, sheet, { row: 2, column: 7 }, plan);
}

const MARKED = ["method", "recipe", "sums", "tasting notes"];

/** Marks of the teams, each out of ten. */
function marks(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 0, 0, ["out of 10 each", ...MARKED, "out of 40", "%"]);
  const rows = TEAMS.map((team, index) => {
    const scores = MARKED.map(() => kit.random.whole(4, 10));
    const cells = putRow(sheet, 1 + index, 0, [team, ...scores]).slice(1);
    const whole = sumOf(kit, sheet, { row: 1 + index, column: 5 }, cells);
    return put(sheet, 1 + index, 6, shown(`=${a1(whole)}/40*100`, "0"));
  });
  const heading: Spot = { sheet: sheet.name, row: 0, column: 6 };
  kit.marked.formulaColumns.push({ spots: rows, heading, fixed: [] });
  rowsAt(sheet, { row: 6, column: 0 }, [
    ["Lesson", "Room"],
    ["Monday 3", "Food tech"],
    ["Wednesday 5", "Lab 2"],
  ]);
}

/** A teacher of cooking and science. */
function cookingScience(kit: Kit): void {
  teams(kit, addSheet(kit.marked.book, "Teams"));
  brine(kit, addSheet(kit.marked.book, "Beaker"));
  marks(kit, addSheet(kit.marked.book, "Marks"));
}

/** A school's cooking lessons. */
export const cookingLessons: readonly Layout[] = [
  {
    name: "cooking meets science, three teams and a beaker",
    language: "en",
    build: cookingScience,
  },
];
