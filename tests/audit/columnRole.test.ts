import { columnRole } from "../../src/audit/recipes/headings/columnRole";
import { headerRole } from "../../src/audit/recipes/headings/headerRole";
import { headingPhrases } from "./headingPhrases";

const headings = [
  ...headingPhrases["amount heading"],
  ...headingPhrases["unit heading"],
  ...headingPhrases["price heading"],
];

test.each(headings)("over a column of numbers, %s says what it says anywhere", (heading) => {
  expect(columnRole(heading)).toBe(headerRole(heading));
});

test.each(["Fat (%)", "kcal per 100 g", "Zucker %", "Strength (% vol)"])(
  "%s is no amount of the mix",
  (heading) => {
    expect(columnRole(heading)).toBe("composition");
  },
);

test.each(["Total (g)", "Gesamtmenge", "Supplier", "Bestand (kg)"])(
  "%s is no amount",
  (heading) => {
    expect(columnRole(heading)).toBe("other");
  },
);

test("words of which nothing is known say nothing", () => {
  expect(columnRole("Lemon ice")).toBeNull();
});
