/** The language the spreadsheet speaks, else the browser's. */
export function displayLanguage(): string {
  if (typeof Office !== "undefined") {
    // Not every host tells; then the browser's language has to do.
    const context = Office.context as { displayLanguage?: unknown } | undefined;
    const language = context?.displayLanguage;
    if (typeof language === "string" && language !== "") return language;
  }
  return navigator.language || "en";
}
