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

  test("reads a recipe as the file of --corrections says, made from what --json printed", async () => {
    const file = await saved("second.xlsx", [
      ["Ingredient", "Amount (g)", "Second try"],
      ["Water", 500, 480],
      ["Sucrose", 150, 160],
    ]);
    const [{ correction }] = JSON.parse((await audit(file, "--json")).stdout).recipes;
    const corrections = path.join(folder, "corrections.json");
    await writeFile(corrections, JSON.stringify([{ ...correction, amounts: "C", unit: "oz" }]));
    const { code, stdout } = await audit(file, "--corrections", corrections);
    expect(code).toBe(0);
    expect(stdout).toContain(
      "As it was said, took A2:A3 for the ingredients and column C for the amounts (oz).",
    );
    await writeFile(corrections, JSON.stringify([{ ...correction, unit: "stone" }]));
    expect(await audit(file, "--corrections", corrections)).toEqual({
      code: 2,
      stdout: "",
      stderr: 'The correction of Batch!A1:C3 is not followed: "stone" is no unit of an amount.\n',
    });
    const missing = await audit(file, "--corrections", path.join(folder, "none.json"));
    expect(missing.stderr).toMatch(/^The file of corrections ".*none\.json" cannot be read\.\n$/);
  }, 60_000);

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

  test("a CSV file is read, and one that leaves the decimal mark open is asked about", async () => {
    const file = path.join(folder, "table.csv");
    await writeFile(file, "Ingredient;Amount (g)\nWater;1,250\nSucrose;150\n");
    const asked = await audit(file);
    expect([asked.code, asked.stdout]).toEqual([2, ""]);
    expect(asked.stderr).toMatch(/^"1,250" can mean .*--decimal comma or --decimal point\.\n$/);
    const { code, stdout } = await audit(file, "--decimal", "point");
    expect(code).toBe(0);
    expect(stdout).toContain("Fields were split at semicolons; the decimal mark is the point.");
  });

  test("an accepted finding is kept with its reason and ends with 0; a page is written once only", async () => {
    const file = await saved("accepted.xlsx", [
      ["Ingredient", "Amount (g)"],
      ["Water", 500],
      ["Sucrose", "150,5"],
    ]);
    const { findings } = JSON.parse((await audit(file, "--json")).stdout) as {
      findings: { key: string }[];
    };
    const accepted = path.join(folder, "accepted.json");
    const html = path.join(folder, "report.html");
    await writeFile(
      accepted,
      JSON.stringify(findings.map(({ key }) => ({ finding: key, reason: "typed so" }))),
    );
    const first = await audit(file, "--accepted", accepted, "--html", html);
    expect(first).toMatchObject({ code: 0, stderr: "" });
    expect(first.stdout).toMatch(/ACCEPTED {2}Batch!B3 {2}typed so/);
    expect(await readFile(html, "utf8")).toMatch(/^<!doctype html>[\s\S]*typed so/);
    await writeFile(html, "mine");
    const again = await audit(file, "--html", html);
    expect(again.code).toBe(2);
    expect(again.stderr).toMatch(/report\.html is not written: it exists already/);
    expect(await readFile(html, "utf8")).toBe("mine");
    expect((await audit(file, "--html", html, "--replace")).code).toBe(1);
    expect(await readFile(html, "utf8")).not.toBe("mine");
  });

  test("a stale result is found by calculating anew, unless that is not wanted", async () => {
    const book = new WriterWorkbook();
    const sheet = book.addWorksheet("Batch");
    sheet.addRows([["Ingredient", "Amount (g)"], ["Water", 500], ["Sucrose"]]);
    sheet.getCell("B3").value = { formula: "B2", result: 90 };
    const file = path.join(folder, "stale.xlsx");
    await writeFile(file, new Uint8Array(await book.xlsx.writeBuffer()));
    const { code, stdout } = await audit(file);
    expect(code).toBe(1);
    expect(stdout).toMatch(
      /Batch!B3 {2}B3 shows 90, but its formula gives 500\. {2}\[stale-value\]/,
    );
    const skipped = await audit(file, "--no-recalculation");
    expect(skipped.code).toBe(0);
    expect(skipped.stdout).toContain("their stored results were taken");
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
    ["two files", () => Promise.resolve(["a.xlsx", "b.xlsx"]), /One file is read at a time/],
    [
      "another decimal mark",
      () => Promise.resolve(["a.csv", "--decimal", ";"]),
      /--decimal is comma or point, not ";"/,
    ],
    [
      "acceptances that are not there",
      () => Promise.resolve(["a.xlsx", "--accepted", "none.json"]),
      /acceptances "none.json" cannot be read/,
    ],
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
