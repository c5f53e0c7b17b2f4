/** What one line of the notebook holds; null where nothing was written down. */
export interface NotebookEntry {
  readonly date: string;
  readonly recipe: string;
  /** The recipe as weighed, "water 250 g; sucrose 70 g": so that it can be computed again. */
  readonly mix: string;
  readonly forecastC: number | null;
  readonly forecastBandK: number | null;
  readonly measuredC: number | null;
  readonly brix: number | null;
  /** What the freezer was set to, and what a thermometer in it showed. */
  readonly freezerSetC: number | null;
  readonly freezerC: number | null;
  readonly firmnessForecast: string;
  readonly firmness: string;
  readonly note: string;
}

export type EntryKey = keyof NotebookEntry;

/** The columns of the notebook's sheet in their order, with their headers in either language. */
export const ENTRY_COLUMNS: readonly {
  readonly key: EntryKey;
  readonly en: string;
  readonly de: string;
}[] = [
  { key: "date", en: "date", de: "Datum" },
  { key: "recipe", en: "recipe", de: "Rezept" },
  { key: "mix", en: "weighed", de: "gewogen" },
  { key: "forecastC", en: "first ice forecast, °C", de: "erstes Eis vorhergesagt, °C" },
  { key: "forecastBandK", en: "± K", de: "± K" },
  { key: "measuredC", en: "first ice measured, °C", de: "erstes Eis gemessen, °C" },
  { key: "brix", en: "Brix measured", de: "Brix gemessen" },
  { key: "freezerSetC", en: "freezer set to, °C", de: "Gefriergerät eingestellt, °C" },
  { key: "freezerC", en: "freezer measured, °C", de: "Gefriergerät gemessen, °C" },
  { key: "firmnessForecast", en: "firmness forecast", de: "Festigkeit vorhergesagt" },
  { key: "firmness", en: "firmness found", de: "Festigkeit gefunden" },
  { key: "note", en: "note", de: "Notiz" },
];
