import { createInterface } from "node:readline";
import { parseArgs } from "node:util";
import { isProblem } from "../foundation/problem";
import { openCalculator } from "./calculator";
import { readBook } from "./readBook";

// npm run -s calc -- '=RIME.FREEZINGPOINT({"water";"sucrose"},{200;70})' ['<formula>' …] [--book file.xlsx]
// Without a formula, one formula per line is read from standard input. One JSON object per line is printed.

const USAGE = `Usage: npm run -s calc -- '=FORMULA(…)' [more formulas] [--book file.xlsx]
       or one formula per line on standard input.`;

const PARSE_FAILED = 1;
const UNREADABLE = 2;

function readOptions(): { formulas: string[]; book: string | undefined } | string {
  try {
    const options = { book: { type: "string" }, help: { type: "boolean", short: "h" } } as const;
    const { values, positionals } = parseArgs({ options, allowPositionals: true });
    if (values.help === true) return USAGE;
    return { formulas: positionals, book: values.book };
  } catch (error) {
    return `${error instanceof Error ? error.message : String(error)}\n${USAGE}`;
  }
}

/** The formulas of the command line, else the lines of standard input as they come. */
async function* formulasOf(given: readonly string[]): AsyncGenerator<string> {
  if (given.length > 0) yield* given;
  else yield* createInterface({ input: process.stdin, crlfDelay: Infinity });
}

async function main(): Promise<number> {
  const options = readOptions();
  if (typeof options === "string" || (options.formulas.length === 0 && process.stdin.isTTY)) {
    console.error(typeof options === "string" ? options : USAGE);
    return UNREADABLE;
  }
  const book = await readBook(options.book);
  if (isProblem(book)) {
    console.error(book.message);
    return UNREADABLE;
  }
  const calculator = await openCalculator(book);
  if (calculator.note !== null) console.error(calculator.note);
  let exitCode = 0;
  for await (const formula of formulasOf(options.formulas)) {
    if (formula.trim() === "") continue;
    const { line, isReadable } = await calculator.answer(formula);
    if (!isReadable) exitCode = PARSE_FAILED;
    process.stdout.write(`${line}\n`);
  }
  calculator.close();
  return exitCode;
}

// Whoever reads the lines may stop early, as `head` does.
process.stdout.on("error", () => process.exit());

void main().then((exitCode) => {
  process.exitCode = exitCode;
});
