import { execFile } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { Workbook as WriterWorkbook } from "@cj-tech-master/excelts";

const root = path.join(__dirname, "..", "..");

interface Outcome {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the command as its script does. */
const audit = (...args: readonly string[]): Promise<Outcome> =>
  new Promise((resolve) => {
    const command = ["--import", "tsx", "src/cli/audit.ts", ...args];
    execFile(process.execPath, command, { cwd: root }, (error, stdout, stderr) =>
      resolve({ code: typeof error?.code === "number" ? error.code : 0, stdout, stderr }),
    );
  });

let folder: string;

async function saved(
  name: string,
  rows: readonly (readonly (string | number | null)[])[],
): Promise<string> {
  const book = new WriterWorkbook();
  const sheet = book.addWorksheet("Batch");
  for (const row of rows) sheet.addRow([...row]);
  const file = path.join(folder, name);
  await writeFile(file, new Uint8Array(await book.xlsx.writeBuffer()));
  return file;
}

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "audit-"));
});
afterAll(() => rm(folder, { recursive: true }));

describe("npm run -s audit", () => {
  test("ends with 0 on a clean book and says what it took for what", async () => {
    const file = await saved("clean.xlsx", [
      ["Ingredient", "Amount (g)"],
      ["Water", 500],
      ["Sucrose", 150],
    ]);
    const { code, stdout, stderr } = await audit(file);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toContain("Took A2:A3 for the ingredients and column B for the amounts (g).");
    expect(stdout).toContain("No findings.");
  });

  test("ends with 1 on findings, as JSON of the promised shape, and leaves the file as it was", async () => {
    const file = await saved("faulty.xlsx", [
      ["Ingredient", "Amount (g)"],
      ["Water", 500],
      ["Sucrose", 150],
      ["Fructose", "12,5"],
    ]);
    const before = await readFile(file);
    const { code, stdout } = await audit(file, "--json");
    expect(code).toBe(1);
    const report: unknown = JSON.parse(stdout);
    expect(report).toMatchObject({
      findings: [
        {
          rule: "number-as-text",
          severity: "error",
          sheet: "Batch",
          cell: "B4",
          message: expect.stringContaining('"12,5"'),
          effect: {
            quantity: "freezing point",
            from: expect.any(Number),
            to: expect.any(Number),
            unit: "°C",
          },
        },
      ],
      recipes: [{ sheet: "Batch", range: "A1:B4", recipes: 1 }],
      summary: { sheets: 1, recipes: 1, errors: 1, warnings: 0, notes: 0 },
    });
    expect(await readFile(file)).toEqual(before);
    const text = (await audit(file)).stdout;
    expect(text).toMatch(/freezing point −\d+\.\d+ instead of −\d+\.\d+ °C/);
  });

  test.each<[string, () => Promise<readonly string[]>, RegExp]>([
    [
      "a file that is not there",
      () => Promise.resolve([path.join(folder, "none.xlsx")]),
      /there is no such file/,
    ],
    ["a folder", () => Promise.resolve([folder]), /it is a folder/],
    ["a device without an end", () => Promise.resolve(["/dev/zero"]), /it is not a file/],
    ["no file named", () => Promise.resolve([]), /^No file is named\. See /],
    ["an unknown option", () => Promise.resolve(["--fix", "a.xlsx"]), /There is no option --fix/],
    [
      "a text file with another name",
      async () => {
        const file = path.join(folder, "text.xlsx");
        await writeFile(file, "Ingredient;g\n");
        return [file, "--json"];
      },
      /not an \.xlsx workbook/,
    ],
  ])("ends with 2 and one sentence on %s", async (_, args, sentence) => {
    const { code, stdout, stderr } = await audit(...(await args()));
    expect({ code, stdout }).toEqual({ code: 2, stdout: "" });
    expect(stderr).toMatch(sentence);
    expect(stderr.trimEnd()).not.toContain("\n");
  });
});
