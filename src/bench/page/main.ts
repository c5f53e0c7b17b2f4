import "./style.css";
import { describeFunctions, registerFunctions } from "../../workbook/univer/registerFunctions";
import { parseA1 } from "../address";
import { sheet } from "../demo/cells";
import { demoBook } from "../demo/demoBook";
import { askDecimal } from "./askDecimal";
import type { Bench } from "./bench";
import { bookFiles } from "./bookFiles";
import { createGrid, setGridLanguage, type Language } from "./createGrid";
import { onFileDrop } from "./fileDrop";
import type { AskDecimal } from "./fileToBook";
import { loadDescriptions, loadFunctions } from "./functionHost";
import { chooseTongue, inTongue } from "./inTongue";
import { openBook } from "./openBook";
import { placeBelowFormulaBar, showMessage } from "./messageLine";
import { applyNotation } from "./notation";
import { showNotice } from "./notice";
import { setUpPaneDivider } from "./paneDivider";
import { UniverGrid } from "./univerGrid";
import { showWords } from "./words";

function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`The page has no element ${id}.`);
  return found;
}

const say = (sentences: readonly string[]): void =>
  showNotice(element("notice"), sentences.map(inTongue));

/** Runs something that may fail for a reason the user should read, and shows what it has to say. */
function tell(work: () => Promise<readonly string[]>): void {
  work().then(say, (error: unknown) =>
    say([`That did not work: ${error instanceof Error ? error.message : String(error)}`]),
  );
}

async function start(): Promise<void> {
  const loading = loadFunctions();
  const api = createGrid(element("grid"), "en");
  const grid = new UniverGrid(api);
  const line = element("message");
  const askMark: AskDecimal = (fileName, question) =>
    askDecimal(element("question") as HTMLFormElement, `${fileName}: ${inTongue(question)}`);
  placeBelowFormulaBar(api, line);
  const files = bookFiles(api, grid, askMark, ({ name }) => {
    element("book-name").textContent = name;
    document.title = `${name} – Rimeline`;
  });

  // The grid takes functions only when a book is open, and remembers formulas met before as #NAME?.
  const functions = await loading;
  await openBook(api, { name: "", sheets: [sheet("Blank", [], [])], names: [] });
  const messages = registerFunctions(api, functions);
  applyNotation(api, () => (document.documentElement.lang === "de" ? "de" : "en"));
  await files.show(demoBook);
  const messageAt: Bench["messageAt"] = (sheet, row, column) => {
    const workbook = api.getActiveWorkbook();
    const sheetId = workbook?.getSheetByName(sheet)?.getSheetId();
    if (!workbook || sheetId === undefined) return null;
    return messages.messageAt({ unitId: workbook.getId(), sheetId, row, column });
  };
  const valueAt: Bench["valueAt"] = async (sheet, address) => {
    await grid.settled();
    const range = parseA1(address);
    return range === null ? null : (grid.read(sheet, range).values[0]?.[0] ?? null);
  };
  window.rimelineBench = { grid, messageAt, valueAt };

  const explain = (): void => {
    const { sheet, range } = grid.selection();
    const sentence = messageAt(sheet, range.top, range.left);
    showMessage(line, sentence === null ? null : inTongue(sentence));
  };
  grid.onSelectionChanged(explain);
  api.getFormula().calculationResultApplied(explain);

  const pane = element("pane") as HTMLIFrameElement;
  const fileInput = element("open-file") as HTMLInputElement;
  fileInput.addEventListener("change", () => {
    const [file] = fileInput.files ?? [];
    if (file !== undefined) tell(() => files.openFile(file));
    fileInput.value = "";
  });
  onFileDrop(element("drop-hint"), (file) => tell(() => files.openFile(file)));
  element("save-copy").addEventListener("click", () => tell(files.saveCopy));
  element("demo-book").addEventListener("click", () => tell(() => files.show(demoBook)));
  const speak = async (language: Language): Promise<readonly string[]> => {
    await chooseTongue(language);
    document.documentElement.lang = language; // the pane's host tells the pane
    showWords(language);
    setGridLanguage(api, language);
    pane.contentWindow?.location.reload();
    explain();
    describeFunctions(api, await loadDescriptions(language));
    return [];
  };
  element("language").addEventListener("change", (event) => {
    const language = (event.target as HTMLSelectElement).value as Language;
    tell(() => speak(language));
  });
  setUpPaneDivider(element("divider"), pane, element("toggle-pane"));
  await grid.settled();
  pane.src = "/pane.html";
}

start().catch((error: unknown) => {
  say([`The bench could not start: ${error instanceof Error ? error.message : String(error)}`]);
});
