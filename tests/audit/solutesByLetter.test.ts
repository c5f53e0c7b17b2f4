import { formula, type Rows } from "./bookOf";
import { expectFound } from "./tried";

// Expected numbers by i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

/** Name, grams, molar mass and particles of a solute, and by how much its moles are multiplied. */
interface Solute {
  readonly name: string;
  readonly grams: number;
  readonly molar: number;
  readonly ions: number;
  readonly counted?: number;
}

const SUGAR: Solute = { name: "sucrose", grams: 29, molar: 342.3, ions: 1 };
const HYDRATE: Solute = { name: "glucose monohydrate", grams: 14, molar: 198.17, ions: 1 };
const SALT: Solute = { name: "sodium chloride", grams: 2, molar: 58.44, ions: 2 };

const LETTERS = ["A", "B", "C"];

/** A question about three solutes in one water, called by letters; the salt's moles are multiplied or not. */
function question(first: Solute, isCounted = true): Rows {
  const solutes = [first, HYDRATE, SALT];
  const waterGrams = 250;
  const moles = solutes.map(({ grams, molar, ions }) => (grams / molar) * (isCounted ? ions : 1));
  const data = solutes.flatMap(({ name, grams, molar, ions }, at): Rows => {
    const letter = LETTERS[at] ?? "";
    return [
      [`solute ${letter}`, name],
      [`mass of ${letter}`, grams, "g"],
      [`molar mass of ${letter}`, molar, "g/mol"],
      [`van 't Hoff factor of ${letter}`, ions],
    ];
  });
  const molality = moles.reduce((sum, one) => sum + one, 0) / (waterGrams / 1000);
  const times = (row: number) => (isCounted ? `*B${row}` : "");
  return [
    ["mass of water (g)", waterGrams],
    ["K_f of water", 1.86, "K kg/mol"],
    ...data,
    [],
    ...[4, 8, 12].map((row, at) => [
      `from ${LETTERS[at]}`,
      formula(`B${row}/B${row + 1}${times(row + 2)}`, moles[at] ?? 0),
      "mol",
    ]),
    ["all particles, molal", formula("SUM(B16:B18)/(B1/1000)", molality), "mol/kg"],
    ["depression", formula("B2*B19", 1.86 * molality), "K"],
    ["Accept 0.2 K either way: the ideal law comes that near."],
  ];
}

test("the molar masses of solutes called by letters are those of the solutes", () => {
  expectFound({ what: "as it should be", sheets: { Q: question(SUGAR) }, found: [] });
  const found = ["constant-of-a-solute Q!B5", "result-differs Q!B20"];
  const sheets = { Q: question({ ...SUGAR, molar: 180.16 }) };
  expectFound({ what: "the molar mass of another sugar", sheets, found });
});

test("what does not dissolve has no moles, whatever letter it has", () => {
  const sheets = { Q: question({ ...SUGAR, name: "digestive biscuits" }) };
  const found = ["inclusion-as-solute Q!B16", "result-differs Q!B20"];
  expectFound({ what: "biscuits", sheets, found });
});

test("of the mistakes that would explain a number the one that comes nearest is told", () => {
  // Per kilogram of mix it would be within 0.6 %, since the solutes weigh 45 g.
  const sheets = { Q: question(SUGAR, false) };
  expectFound({ what: "salt counted once", sheets, found: ["particles-not-counted Q!B20"] });
});
