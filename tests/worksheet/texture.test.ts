import fc from "fast-check";
import { callFunction } from "../../src/worksheet/callFunction";
import { cellOf, column, numberOf, ofRecipe, problemOf } from "./ask";

type Grams = Readonly<Record<string, number>>;

const textureOf = (grams: Grams, temperatureC: number) =>
  cellOf("TEXTURE", column(Object.keys(grams)), column(Object.values(grams)), temperatureC);

const iceCream = { "cream 35 % fat": 343, "skim milk powder": 94, sucrose: 150, water: 413 };
const softIce = { "cream 35 % fat": 142, "skim milk powder": 115, sucrose: 135, water: 608 };
const icePop = { water: 850, sucrose: 150 };

// Common practice, no source: what the trade says of each at this temperature.
describe("textbook mixes are called what the trade calls them", () => {
  test.each([
    ["slush of 15 % sugar", icePop, -1.5, "pours"],
    ["churned granita at −2", { water: 880, sucrose: 120 }, -2, "spoons"],
    ["soft ice from the machine", softIce, -6, "spoons"],
    ["ice cream of 12 % fat in the scooping cabinet", iceCream, -13, "scoops"],
    ["sorbet of 28 % sugar in the scooping cabinet", { water: 720, sucrose: 280 }, -12, "scoops"],
    ["the same ice cream from the household freezer", iceCream, -18, "bites"],
    ["the same ice cream from the cold store", iceCream, -25, "bites"],
    ["ice pop of 15 % sugar", icePop, -18, "bites"],
    ["water ice of 5 % sugar", { water: 95, sucrose: 5 }, -18, "rock-hard"],
    ["frozen water", { water: 100 }, -5, "rock-hard"],
    ["water", { water: 100 }, 20, "flows"],
    ["sugar syrup of 65 %", { water: 35, sucrose: 65 }, 20, "flows"],
    ["honey on the table", { honey: 100 }, 20, "squeezes"],
    ["honey in the freezer", { honey: 100 }, -18, "pulls"],
    ["caramel of 10 % water", { water: 1, "glucose syrup DE 42": 40, sucrose: 45 }, 20, "pulls"],
    ["glucose syrup in the freezer", { "glucose syrup DE 42": 100 }, -18, "cuts"],
    ["boiled sugar", { water: 2, sucrose: 98 }, 20, "snaps"],
  ])("%s", (_title, grams, temperatureC, word) => {
    expect(textureOf(grams, temperatureC)).toBe(word);
  });
});

test("a mix never grows softer in the cold, with ice or without", () => {
  const withIce = ["pours", "spoons", "scoops", "bites", "rock-hard"];
  const withoutIce = ["flows", "squeezes", "pulls", "cuts", "snaps"];
  fc.assert(
    fc.property(
      fc.double({ min: -45, max: 30, noNaN: true }),
      fc.double({ min: 5, max: 400, noNaN: true }),
      (temperatureC, sucrose) => {
        const grams = { water: 100, sucrose };
        const colder = textureOf(grams, temperatureC - 2) as string;
        const warmer = textureOf(grams, temperatureC) as string;
        for (const scale of [withIce, withoutIce]) {
          const [cold, warm] = [scale.indexOf(colder), scale.indexOf(warmer)];
          if (cold >= 0 && warm >= 0 && cold < warm) return false;
        }
        // ice does not go away in the cold
        return !(withIce.includes(warmer) && withoutIce.includes(colder));
      },
    ),
    { numRuns: 300 },
  );
});

// Williams, Landel and Ferry 1955: 13.1 decades fall within 155 K above Tg; independent sum by hand
test("the working shows the decade by WLF from the glass transition of what is not frozen", () => {
  const names = column(Object.keys(iceCream));
  const lines = callFunction("WORKING", names, column(Object.values(iceCream)), -18);
  const result = (step: string) =>
    lines.find(([name]) => (name as string).startsWith(step))?.[3] as number;
  const distance = -18 - result("glass transition of what is not frozen");
  const decade = 12 - (17.44 * distance) / (51.6 + distance);
  expect(result("its viscosity")).toBeCloseTo(decade, 5);
  const ice = ofRecipe("ICEFRACTION", iceCream, -18, "mix");
  expect(result("firmness")).toBeCloseTo(decade + 5 * ice, 5);
  // ice leaves a stronger phase than the mix as written, whose glass transition lies lower
  expect(result("glass transition of what is not frozen")).toBeGreaterThan(
    numberOf("GLASSTRANSITION", names, column(Object.values(iceCream))),
  );
});

test("a brine, whose glass transition is not known, is declined in words", () => {
  const { kind, message } = problemOf(
    "TEXTURE",
    column(["water", "fine salt"]),
    column([200, 30]),
    -15,
  );
  expect(kind).toBe("outsideValidity");
  expect(message).toMatch(/grams: .*no known glass transition/);
});
