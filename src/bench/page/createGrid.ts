import "@univerjs/preset-sheets-core/lib/index.css";
import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import german from "@univerjs/preset-sheets-core/locales/de-DE";
import english from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import "@univerjs/sheets-numfmt/facade";
import "@univerjs/sheets-table/facade";
import { defaultTheme } from "@univerjs/themes";
import { undoHistoryOverride } from "./undoHistory";

export type Language = "en" | "de";

const LOCALES: Record<Language, LocaleType> = { en: LocaleType.EN_US, de: LocaleType.DE_DE };

const prefersDark = (): MediaQueryList => window.matchMedia("(prefers-color-scheme: dark)");

/** The grid with its formula bar, tables and number formats, in the page's own light or dark. */
export function createGrid(container: HTMLElement, language: Language): FUniver {
  const univer = new Univer({
    theme: defaultTheme,
    darkMode: prefersDark().matches,
    locale: LOCALES[language],
    locales: { [LocaleType.EN_US]: english, [LocaleType.DE_DE]: german },
    logLevel: LogLevel.WARN,
    override: undoHistoryOverride,
  });
  const { plugins } = UniverSheetsCorePreset({
    container,
    header: true,
    toolbar: true,
    ribbonType: "simple",
    footer: { menus: false },
    formula: { functionScreenTips: true },
  });
  for (const plugin of plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  univer.registerPlugin(UniverSheetsTablePlugin);
  const api = FUniver.newAPI(univer);
  prefersDark().addEventListener("change", (event) => api.toggleDarkMode(event.matches));
  return api;
}

/** The grid's own words, and the decimal mark of its number formats. */
export function setGridLanguage(api: FUniver, language: Language): void {
  api.setLocale(LOCALES[language]);
  api.getActiveWorkbook()?.setNumfmtLocal(language);
}
