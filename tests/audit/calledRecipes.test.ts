import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";

/** What was found, as "names / amounts" of each recipe. */
const found = (rows: Rows): readonly string[] =>
  auditContext(bookOf({ Sheet1: rows }), []).blocks.flatMap(({ names, recipes }) =>
    recipes.map(({ line }) => `${names.map(({ item }) => item).join(", ")} / ${line}`),
  );

const point = (address: string) => formula(`RIME.FREEZINGPOINT(${address})`, -3);

test("a list far below its headings is one by the functions that are given it", () => {
  const rows: Rows = [
    ["Flavour", "€ per kg", "Lemon", "Orange"],
    ["Sold as", null, "scooped at −13", "scooped at −13"],
    ["Freezing point (°C)", null, point("$A$5:$A$7,C5:C7"), point("$A$5:$A$7,D5:D7")],
    [],
    ["water", 0.01, 600, 500],
    ["sugar", 1.2, 200, 180],
    ["lemon juice", 4, 100, 20],
  ];
  expect(found(rows)).toEqual(["water, sugar, lemon juice / 2", "water, sugar, lemon juice / 3"]);
});

test("several recipes in one list are taken apart by the functions that are given them", () => {
  const rows: Rows = [
    ["Ingredient", "%", null, "Freezing point (°C)"],
    ["water", 70, null, point("A2:A3,B2:B3")],
    ["sugar", 30, null, point("A4:A5,B4:B5")],
    ["milk 2 % fat", 85],
    ["honey", 15],
  ];
  expect(found(rows)).toEqual(["water, sugar / 1", "milk 2 % fat, honey / 1"]);
});

test("a range that reaches too far or not far enough does not change a list", () => {
  const rows: Rows = [
    ["Ingredient", "Amount (g)"],
    ["water", 600],
    ["sugar", 150],
    ["honey", 50],
    ["Freezing point (°C)", point("A2:A3,B2:B3")],
  ];
  expect(found(rows)).toEqual(["water, sugar, honey / 1"]);
});

test("a list is one by the functions of another sheet that are given it, too", () => {
  const kitchen: Rows = [
    ["Kitchen", "Lemon"],
    ["house syrup, thin", 400],
    ["water", 600],
  ];
  const answers: Rows = [["Freezing point (°C)", point("Kitchen!A2:A3,Kitchen!B2:B3")]];
  const { blocks } = auditContext(bookOf({ Kitchen: kitchen, Answers: answers }), []);
  expect(blocks.map(({ sheet, names }) => [sheet.name, names.length])).toEqual([["Kitchen", 2]]);
});
