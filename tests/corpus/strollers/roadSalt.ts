import { a1, addSheet, put, putRow, shown, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { problems, type Problem } from "../layouts/parts";

const HEADS = [
  ...["Beaker", "Solute", "Molar mass (g/mol)", "Ions or molecules", "Solute weighed (g)"],
  ...["Water poured (g)", "Kf (°C kg/mol)", "Moles of solute", "Moles per kg of water"],
  ...["Falls by (°C)", "Predicted freezing point (°C)"],
];

/** One beaker along its row; gives its cells, the worked ones with them. */
function beaker(kit: Kit, row: number, { solute, grams, waterGrams }: Problem): readonly Spot[] {
  const sheet = kit.marked.book.sheets[0]!;
  const given = putRow(sheet, row, 0, [
    ...[row - 4, solute.en, shown(solute.molarMass, "0.00"), solute.particles, grams, waterGrams],
    shown(1.86, "0.00"),
  ]);
  const [, , molar, ions, mass, water, kf] = given.map(a1);
  const worked = (column: number, formula: string, format: string): Spot =>
    put(sheet, row, column, shown(formula, format));
  const moles = worked(7, `=${mass}/${molar}`, "0.0000");
  const perKilo = worked(8, `=${a1(moles)}*1000/${water}`, "0.000");
  const falls = worked(9, `=${kf}*${a1(perKilo)}*${ions}`, "0.00");
  const point = worked(10, `=0-${a1(falls)}`, "0.00");
  return [...given, moles, perKilo, falls, point];
}

/** Beakers of a chemistry class, a row each, the constant in every row. */
function roadSalt(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Lesson 3");
  put(sheet, 0, 0, "Year 11 chemistry: why the council grits the roads");
  put(sheet, 1, 0, "Fill in columns B to F, the sheet works out the rest.");
  const heads = putRow(sheet, 4, 0, HEADS);
  const { list, tolerance } = problems(kit, 5);
  const rows = list.map((problem, index) => beaker(kit, 5 + index, problem));
  const text = `Ideal dilute solutions: predictions should be within ${tolerance} °C of the real value.`;
  const proviso = put(sheet, 11, 0, text);
  for (const cells of rows) {
    const [, name, molar, particles, mass, water, constant, moles, , depression, point] = cells;
    marked.solutions.push({
      ...{ names: [name!], grams: [mass!], molarMasses: [molar!], particles: [particles!] },
      ...{ moles: [moles!], water: water!, constant: constant!, depression: depression! },
      ...{ freezingPoint: point!, proviso },
    });
  }
  [7, 8, 9, 10].forEach((column) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, column), heading: heads[column]!, fixed: [] },
    }),
  );
  note(kit, sheet, 12, 0, "Homework: which beaker would you put on your own steps?");
}

/** A chemistry teacher. */
export const roadSalts: readonly Layout[] = [
  { name: "gritting lesson, the constant in every row", language: "en", build: roadSalt },
];
