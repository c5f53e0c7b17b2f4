import { isProblem } from "../../src/foundation/problem";
import { worksheetFunctions } from "../../src/worksheet/functions";
import { argumentsOf } from "../worksheet/callFormula";

// npx tsx tests/benchmarks/fuzzFunctions.ts [calls, 1000000 when left out] [seed]
// Calls every function with arguments drawn from right, odd and wrong ones, and prints how many calls gave
// NaN, Infinity, undefined, a ragged answer or an exception, with the first few of them. Exit 1 if any did.

const calls = Number(process.argv[2] ?? 1_000_000);
let state = Number(process.argv[3] ?? 20011);
const random = () => (state = (state * 48271) % 2147483647) / 2147483647;
const pick = <T>(some: readonly T[]): T => some[Math.floor(random() * some.length)]!;

const ODD = [
  ...[
    null,
    undefined,
    "",
    " ",
    "x",
    "12,5",
    "½",
    "water",
    "sucrose",
    "honey",
    "salt",
    "milk",
    "total",
  ],
  ...[
    "__proto__",
    "constructor",
    "freezing point",
    "ice fraction",
    "mass",
    "mix",
    "g",
    "cup",
    true,
    false,
  ],
  ...[
    0,
    -0,
    1,
    -1,
    0.5,
    100,
    -18,
    -60,
    -61,
    1e-300,
    5e-324,
    1e9,
    1e300,
    -1e300,
    NaN,
    Infinity,
    -Infinity,
  ],
  ...[10n, Symbol("x"), () => 1, {}, new Date(0), [], [[]], [[1], [2, 3]]],
  { type: "Error", basicType: "Error", basicValue: "#N/A" },
];
const number = () =>
  pick([random(), 10 * random(), 1000 * random(), -40 * random(), 10 ** (600 * random() - 300)]);
const scalar = (usual: unknown) => {
  const kind = random();
  return kind < 0.5 ? usual : kind < 0.8 ? number() : pick(ODD);
};
const first = (usual: unknown): unknown =>
  Array.isArray(usual) ? first((usual as unknown[])[0]) : usual;

function drawn(usual: unknown): unknown {
  if (Array.isArray(usual) && random() < 0.7) {
    return (usual as unknown[]).map((row) => (Array.isArray(row) ? row.map(scalar) : scalar(row)));
  }
  const shape = random();
  const one = () => scalar(first(usual));
  if (shape < 0.7) return one();
  return shape < 0.85 ? [[one()], [one()]] : [[one(), one()]];
}

const usualArguments = worksheetFunctions.map(({ example }) => argumentsOf(example.formula));
const isSound = (cell: unknown) =>
  cell === null ||
  isProblem(cell) ||
  ["string", "boolean"].includes(typeof cell) ||
  Number.isFinite(cell);

let unsound = 0;
for (let call = 0; call < calls; call += 1) {
  const at = call % worksheetFunctions.length;
  const { name, parameters, evaluate } = worksheetFunctions[at]!;
  const args = parameters.map((_, index) => drawn(usualArguments[at]![index] ?? null));
  const shown = () =>
    args
      .map((arg) =>
        JSON.stringify(arg, (_key, value: unknown) =>
          typeof value === "bigint" ? String(value) : value,
        ),
      )
      .join(", ");
  try {
    const answer = evaluate(args);
    const width = answer[0]?.length ?? 0;
    if (width > 0 && answer.every((row) => row.length === width && row.every(isSound))) continue;
    if (unsound++ < 10) console.log(`${name}(${shown()}) → ${JSON.stringify(answer)}`);
  } catch (error) {
    if (unsound++ < 10) console.log(`${name}(${shown()}) threw ${String(error)}`);
  }
}
console.log(`${calls} calls, ${unsound} of them unsound`);
process.exitCode = unsound > 0 ? 1 : 0;
