import type { SpreadsheetHost } from "../../taskpane/host";
import { newShared } from "../../taskpane/shared";
import type { PaneContext } from "../../taskpane/view";
import { english } from "../../taskpane/words/english";
import { german } from "../../taskpane/words/german";
import { numberFormat } from "../../taskpane/words/numberFormat";

/** What a view is handed in a test; `said` collects what a screen reader would have been told. */
export function paneContext(host: SpreadsheetHost | null, language = "en") {
  const said: string[] = [];
  const context: PaneContext = {
    host,
    words: language === "en" ? english : german,
    numbers: numberFormat(language),
    shared: newShared(),
    announce: (sentence) => said.push(sentence),
  };
  return { context, said };
}
