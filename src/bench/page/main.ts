import "./style.css";
import { registerFunctions } from "../../workbook/univer/registerFunctions";
import { parseA1 } from "../address";
import { demoBook } from "../demo/demoBook";
import { createGrid, setGridLanguage, type Language } from "./createGrid";
import type { Bench } from "./bench";
import { loadFunctions } from "./functionHost";
import { placeBelowFormulaBar, showMessage } from "./messageLine";
import { openBook } from "./openBook";
import { setUpPaneDivider } from "./paneDivider";
import { UniverGrid } from "./univerGrid";

function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`The page has no element ${id}.`);
  return found;
}

async function start(): Promise<void> {
  const loading = loadFunctions();
  const api = createGrid(element("grid"), "en");
  const line = element("message");
  placeBelowFormulaBar(api, line);
  await openBook(api, demoBook);
  const grid = new UniverGrid(api);

  const messages = registerFunctions(api, await loading, () => undefined);
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

  const say = () => {
    const { sheet, range } = grid.selection();
    showMessage(line, messageAt(sheet, range.top, range.left));
  };
  grid.onSelectionChanged(say);
  api.getFormula().calculationResultApplied(say);
  setUpPaneDivider(element("divider"), element("pane"), element("toggle-pane"));
  element("language").addEventListener("change", (event) =>
    setGridLanguage(api, (event.target as HTMLSelectElement).value as Language),
  );
  await grid.settled();
  (element("pane") as HTMLIFrameElement).src = "/pane.html";
}

void start();
