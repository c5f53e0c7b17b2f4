import { clickCell, newSheet, openBenchPage, type BenchPage } from "./benchPage";
import { describeInBrowser } from "./chromium";

const MESSAGE_LINE = "#message";

describeInBrowser("The bench in German", () => {
  let bench: BenchPage;
  beforeAll(async () => {
    bench = await openBenchPage();
    await bench.page.selectOption("#language", "de");
    await bench.page.waitForFunction(() => document.documentElement.lang === "de");
  }, 180_000);
  afterAll(() => bench.close());

  const shows = (text: string) =>
    bench.page.waitForFunction(
      ([line, wanted]) => document.querySelector(line)?.textContent === wanted,
      [MESSAGE_LINE, text] as const,
    );

  test("a function's refusal is explained in German, and the cell shows the same error", async () => {
    const { page } = bench;
    await newSheet(page, "Eis", [["watr", 100, "=RIME.FREEZINGPOINT(A1,B1)"]]);
    await clickCell(page, 0, 2);
    await shows(
      "items: „watr“ steht weder im Katalog noch unter den eigenen Zutaten; am nächsten kommt „water“.",
    );
    expect(await page.evaluate(() => window.rimelineBench!.valueAt("Eis", "C1"))).toEqual({
      error: "#N/A",
    });
  });

  test("a formula that asks for too many cells ends in one German sentence, at once", async () => {
    const { page } = bench;
    await newSheet(page, "Folge", [["=SEQUENCE(1E9)"]]);
    await clickCell(page, 0, 0);
    await shows(
      "SEQUENCE würde 1\u202f000\u202f000\u202f000 × 1 Zellen füllen; beantwortet werden höchstens 1\u202f000\u202f000.",
    );
  });

  test("a file that is no workbook is refused in German", async () => {
    const { page } = bench;
    const mimeType = "";
    const buffer = Buffer.from("Zucker;1,30");
    await page.setInputFiles("#open-file", { name: "Preise.xlsx", mimeType, buffer });
    await page.getByText("Preise.xlsx wurde nicht geöffnet. Die Datei ist").waitFor();
  });

  test("nothing was asked of other hosts, and the page reported no error", () => {
    expect(bench.foreign).toEqual([]);
    expect(bench.errors).toEqual([]);
  });
});
