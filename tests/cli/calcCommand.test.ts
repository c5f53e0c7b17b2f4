import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { Workbook } from "@cj-tech-master/excelts";

// Few tests, since each starts the command; what it answers is tested in calculator.test.ts.

const root = path.join(__dirname, "..", "..");

interface Outcome {
  code: number | null;
  lines: Record<string, unknown>[];
  errors: string;
}

function run(script: string, args: string[], input = ""): Promise<Outcome> {
  const command = ["--import", "tsx", path.join(root, "src", "cli", script), ...args];
  const child = spawn(process.execPath, command, { cwd: root });
  let [out, errors] = ["", ""];
  child.stdout.on("data", (chunk) => (out += String(chunk)));
  child.stderr.on("data", (chunk) => (errors += String(chunk)));
  child.stdin.end(input);
  return new Promise((resolve) => {
    child.on("close", (code) => {
      const lines = out
        .split("\n")
        .filter((line) => line !== "")
        .map((line) => JSON.parse(line));
      resolve({ code, lines, errors });
    });
  });
}

const calc = (args: string[], input?: string): Promise<Outcome> => run("calc.ts", args, input);

describe("npm run -s calc", () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), "calc-"));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  test("answers the formulas of the command line and exits with 0", async () => {
    const { code, lines, errors } = await calc(["=1/3", "={1;2}"]);
    expect(lines).toEqual([
      { formula: "=1/3", value: 1 / 3 },
      { formula: "={1;2}", value: [[1], [2]] },
    ]);
    expect({ code, errors }).toEqual({ code: 0, errors: "" });
  });

  test("answers every line of standard input, also after one that cannot be read", async () => {
    const { code, lines, errors } = await calc([], "=1+1\r\n\n=SUM(1,\n=1/0\n");
    expect(lines).toMatchObject([{ value: 2 }, { formula: "=SUM(1," }, { error: "#DIV/0!" }]);
    expect({ code, errors }).toEqual({ code: 1, errors: "" });
  });

  test("reads the cells of a workbook", async () => {
    const file = path.join(folder, "book.xlsx");
    const book = new Workbook();
    const sheet = book.addWorksheet("Batch");
    sheet.addRows([
      ["water", 200],
      ["sucrose", 70],
    ]);
    sheet.getCell("B3").value = { formula: "SUM(B1:B2)", result: 270 };
    writeFileSync(file, new Uint8Array(await book.xlsx.writeBuffer()));
    const fromCells = "=RIME.FREEZINGPOINT(A1:A2,B1:B2)";
    const written = '=RIME.FREEZINGPOINT({"water";"sucrose"},{200;70})';
    const formulas = ["=B3+1", "=Batch!A2", fromCells, written];
    const { code, lines } = await calc(["--book", file, ...formulas]);
    const [sum, name, first, second] = lines.map(({ value }) => value);
    expect([sum, name]).toEqual([271, "sucrose"]);
    expect(first).toBeLessThan(0);
    expect(first).toBe(second);
    expect(code).toBe(0);
  });

  test("a workbook that cannot be read is one sentence and exit code 2", async () => {
    const file = path.join(folder, "broken.xlsx");
    writeFileSync(file, "not a workbook");
    for (const book of [file, path.join(folder, "none.xlsx")]) {
      const { code, lines, errors } = await calc(["--book", book, "=1"]);
      expect({ code, lines }).toEqual({ code: 2, lines: [] });
      expect(errors).toMatch(/^[^\n]+\.\n$/);
    }
  });

  test("an option it does not know is told together with how to use it", async () => {
    const { code, errors } = await calc(["--boook", "=1"]);
    expect(code).toBe(2);
    expect(errors).toMatch(/Usage:/);
    expect(errors).not.toMatch(/\n\s+at /);
  });
});

const withoutExcel = process.platform !== "win32" && process.platform !== "darwin";

(withoutExcel ? test : test.skip)(
  "where there is no Excel, the command says what to do",
  async () => {
    const { code, errors } = await run("excel.ts", []);
    expect(code).toBe(1);
    expect(errors).toMatch(/npm start/);
  },
);
