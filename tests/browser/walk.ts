import type { Locator } from "playwright-core";
import type { BookSheet } from "../../src/bench/book";
import { bookToXlsx } from "../../src/bench/xlsx/bookToXlsx";
import { openPaneBench, type PaneBench } from "./paneBench";

const MOST_TABS = 80;

/** Opens a workbook file with these sheets in the bench, as a user does. */
export async function openFile(
  { page }: PaneBench,
  name: string,
  sheets: readonly BookSheet[],
): Promise<void> {
  const bytes = await bookToXlsx({ name, names: [], sheets: [...sheets] });
  const buffer = Buffer.from(bytes);
  await page.setInputFiles("#open-file", { name: `${name}.xlsx`, mimeType: "", buffer });
  await page.waitForFunction(
    (title) => document.querySelector("#book-name")?.textContent === title,
    name,
  );
}

/** Waits until a cell holds it: what was written is calculated a moment later. */
export async function holds(
  bench: PaneBench,
  sheet: string,
  address: string,
  value: unknown,
): Promise<void> {
  for (let turn = 0; turn < 50; turn += 1) {
    if ((await bench.valueAt(sheet, address)) === value) return;
    await bench.page.waitForTimeout(100);
  }
  expect(await bench.valueAt(sheet, address)).toEqual(value);
}

/** The pane walked through by someone who has no mouse. */
export async function openWalk(language: "en" | "de" = "en") {
  const bench = await openPaneBench();
  const { page, pane } = bench;
  page.setDefaultTimeout(15_000);
  if (language === "de") {
    await page.getByLabel("Language").selectOption("de");
    await pane.getByRole("tab", { name: "Schüssel" }).waitFor();
  }
  const { keyboard } = page;
  const panel = () => pane.locator('[role="tabpanel"]:not([hidden])');
  const isFocused = (target: Locator) => target.evaluate((each) => each === document.activeElement);
  /** Tab or Shift+Tab, whichever leads there, until it has the focus. A lost focus is an error. */
  const tabTo = async (target: Locator) => {
    await target.waitFor();
    for (let presses = 0; presses < MOST_TABS; presses += 1) {
      if (await isFocused(target)) return;
      const where = await target.evaluate((each) => {
        const { activeElement } = document;
        if (activeElement === null || activeElement === document.body) return "lost";
        const { DOCUMENT_POSITION_PRECEDING } = Node;
        const place = activeElement.compareDocumentPosition(each);
        return (place & DOCUMENT_POSITION_PRECEDING) === 0 ? "Tab" : "Shift+Tab";
      });
      if (where === "lost") throw new Error("The focus was lost.");
      await keyboard.press(where);
    }
    throw new Error(`No way there by Tab: ${String(target)}`);
  };
  const pressOn = async (target: Locator, key = "Enter") => {
    await tabTo(target);
    await keyboard.press(key);
  };
  const button = (name: string | RegExp) =>
    panel().getByRole("button", { name, ...(typeof name === "string" && { exact: true }) });
  return {
    bench,
    page,
    pane,
    keyboard,
    panel,
    button,
    isFocused,
    tabTo,
    pressOn,
    /** Goes to a view by the arrow keys. */
    goToView: async (name: string) => {
      await pane.getByRole("tab", { selected: true }).focus();
      const wanted = pane.getByRole("tab", { name, exact: true });
      for (let presses = 0; presses < 10; presses += 1) {
        if ((await wanted.getAttribute("aria-selected")) === "true") return;
        await keyboard.press("ArrowRight");
      }
      throw new Error(`No view is called ${name}.`);
    },
    press: (name: string | RegExp, key = "Enter") => pressOn(button(name), key),
    /** Opens or closes a part by its heading. */
    unfold: (name: string) => pressOn(panel().locator("summary", { hasText: name })),
    field: (label: string | RegExp) => panel().getByLabel(label),
    /** A field to type in. */
    box: (label: string | RegExp) => panel().getByRole("textbox", { name: label }),
    /** Types into a field in place of what is there. */
    fill: async (target: Locator, text: string) => {
      await tabTo(target);
      await keyboard.press("Control+a");
      await keyboard.type(text);
    },
    /** Chooses from a list by the arrow keys. */
    choose: async (target: Locator, label: string) => {
      await tabTo(target);
      await keyboard.press("Home");
      const chosen = () =>
        target.evaluate((each) => (each as HTMLSelectElement).selectedOptions[0]?.label ?? "");
      for (let presses = 0; presses < 200; presses += 1) {
        if ((await chosen()) === label) return;
        await keyboard.press("ArrowDown");
      }
      throw new Error(`“${label}” is not offered.`);
    },
    /** Waits until a screen reader was told it. */
    heard: (sentence: string | RegExp) =>
      pane.locator('p[aria-live="polite"]').getByText(sentence).waitFor(),
    says: (text: string | RegExp) => panel().getByText(text).first().waitFor(),
    /** Goes back to the sheet and takes the last step back, as one does after a wrong key. */
    undoInSheet: async () => {
      await page
        .locator("canvas[id^=univer-sheet-main-canvas]")
        .click({ position: { x: 500, y: 300 } });
      await keyboard.press("Control+z");
    },
    /** The file that a button hands over. */
    download: async (name: string) => {
      await tabTo(button(name));
      const [file] = await Promise.all([page.waitForEvent("download"), keyboard.press("Enter")]);
      return { name: file.suggestedFilename(), path: await file.path() };
    },
    /** All that stands on a sheet, to be compared with what stands there later. */
    contents: (sheet: string): Promise<readonly (readonly unknown[])[]> =>
      page.evaluate((name) => {
        const { grid } = window.rimelineBench!;
        const { values, formulas } = grid.read(name, { top: 0, left: 0, bottom: 59, right: 39 });
        return values.map((row, r) => row.map((value, c) => formulas[r]?.[c] || value));
      }, sheet),
    close: () => bench.close(),
  };
}

export type Walk = Awaited<ReturnType<typeof openWalk>>;

/** The same in German, on a workbook file that was opened, with a cell of its first sheet selected. */
export async function openGermanWalk(
  sheets: readonly BookSheet[],
  cell: string,
  view: string,
): Promise<Walk> {
  const walk = await openWalk("de");
  await openFile(walk.bench, "Sommer", sheets);
  await walk.bench.select(sheets[0]!.name, cell);
  await walk.goToView(view);
  return walk;
}

/** The last test of a walk. */
export function testThatPageWasQuiet(walk: () => Walk): void {
  test("nothing was asked of any other host, and the page reported no error", () => {
    expect(walk().bench.foreign).toEqual([]);
    expect(walk().bench.errors).toEqual([]);
  });
}

/** What was filled before and is not now what it was: A1-like places, none when nothing was touched. */
export function changedCells(
  before: readonly (readonly unknown[])[],
  after: readonly (readonly unknown[])[],
): readonly string[] {
  return before.flatMap((row, r) =>
    row.flatMap((value, c) =>
      value === null || value === "" || JSON.stringify(value) === JSON.stringify(after[r]?.[c])
        ? []
        : [`row ${r + 1}, column ${c + 1}: ${JSON.stringify([value, after[r]?.[c]])}`],
    ),
  );
}
