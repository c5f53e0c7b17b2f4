import { viscosityDecade } from "../../src/engine/viscosity";
import { soluteNamed } from "../published/solutionOf";
import { ofRecipe } from "../worksheet/ask";

// Belitz, Grosch & Schieberle, Food Chemistry, table 0.7 (after Slade & Levine), 20 % solutions: end of melting
describe("Tm′ of sugars as Food Chemistry prints it, within 6 K", () => {
  test.each([
    ["sucrose", -32],
    ["glucose", -43],
    ["fructose", -42],
    ["galactose", -41.5],
    ["lactose", -28],
    ["trehalose", -29.5],
    ["sorbitol", -43.5],
    ["glycerol", -65],
    ["maltotriose", -23.5],
  ])("%s: %d °C", (name, printedC) => {
    expect(Math.abs(soluteNamed(name).maxFreezeTemperature!.value - printedC)).toBeLessThan(6);
  });
});

// Nippon Shokuhin Kagaku Kogaku Kaishi 44 (1997) 380, over sugars and sugar alcohols
test.each(["sorbitol", "xylitol", "maltitol", "glucose", "maltose", "lactose"])(
  "what is left at Tm′ of %s holds 73 to 87 %% of solids",
  (name) => {
    const share = soluteNamed(name).maxFreezeSolids!.value;
    expect(share).toBeGreaterThanOrEqual(0.73);
    expect(share).toBeLessThanOrEqual(0.87);
  },
);

// Belitz, Grosch & Schieberle, Food Chemistry, table 19.10: sage honey of 18.6 % water, Pa·s
describe("viscosity of honey is met within the decade that is stated", () => {
  const honey = { "honey, average": 100, water: 1.72 }; // 17.2 % brought to 18.6 % of water

  test.each([
    [11.7, 72.96],
    [20.2, 18.48],
    [30.7, 5.52],
    [40.9, 1.92],
    [50.7, 0.95],
  ])("at %d °C: %d Pa·s", (temperatureC, pascalSeconds) => {
    const decade = viscosityDecade(temperatureC, ofRecipe("GLASSTRANSITION", honey));
    expect(Math.abs(decade - Math.log10(pascalSeconds))).toBeLessThan(1);
  });
});
