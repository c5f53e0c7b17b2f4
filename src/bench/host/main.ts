import type { Bench } from "../page/bench";
import { HostError } from "./hostError";
import { office } from "./office";
import { run, type RequestContext } from "./requestContext";

/** Stands in for Excel's hosted script in the pane's page: the same globals, over the bench's grid. */
function install(bench: Bench): void {
  const language = window.parent.document.documentElement.lang === "de" ? "de-DE" : "en-US";
  Object.assign(window, {
    Office: office(language),
    OfficeExtension: { Error: HostError },
    Excel: {
      run: <T>(batch: (context: RequestContext) => Promise<T>) => run(bench.grid, batch),
      SheetVisibility: { visible: "Visible", hidden: "Hidden", veryHidden: "VeryHidden" },
      CalculationMode: {
        automatic: "Automatic",
        automaticExceptTables: "AutomaticExceptTables",
        manual: "Manual",
      },
    },
  });
}

const { rimelineBench } = window.parent as Window & { rimelineBench?: Bench };
if (rimelineBench !== undefined) install(rimelineBench);
