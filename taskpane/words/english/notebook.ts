/** The words of the view that keeps what was measured. */
export const notebook = {
  outside: "The notebook keeps its lines on a sheet; open the pane inside a spreadsheet.",
  sheetName: "Notebook",
  writeTitle: (title: string) => `Write down what became of “${title}”`,
  noRecipe: "Select a recipe to write down what became of it.",
  measuredC: "First ice, measured",
  brix: "Brix of the mix, measured",
  freezerSetC: "Freezer set to",
  freezerC: "Freezer, measured",
  firmness: "How it gave way",
  notFelt: "not tried",
  note: "Note",
  forecast: (point: string) => `The forecast for first ice: ${point}.`,
  noForecast: "There is no forecast for first ice of this mix.",
  firmnessForecast: (word: string, temperature: string) =>
    `Firmness at ${temperature}\u00a0°C: ${word}.`,
  brixForecast: (brix: string) =>
    `A refractometer should read ${brix}\u00a0°Bx, ±\u00a00.3 for sugars, ±\u00a01 with syrups, polyols or protein.`,
  write: "Write it down",
  nothingToWrite: "Enter at least one measurement or a note.",
  written: (place: string) => `Written to ${place}.`,
  notWritten: (place: string) =>
    `${place} was changed meanwhile: nothing was written; try once more.`,
  startsSheet: (name: string) =>
    `There is no notebook in this workbook yet: the first line starts a new sheet, “${name}”.`,
  kept: (count: number, sheet: string) =>
    `${count} ${count === 1 ? "line" : "lines"} on the sheet “${sheet}”`,
  residuals: "Measured less forecast, first ice",
  residualAxis: "K",
  forecastAxis: "forecast, °C",
  recipe: "Recipe",
  measured: "Measured, °C",
  forecastColumn: "Forecast, °C",
  difference: "Difference, K",
  learnTitle: "What can be learnt from it",
  offset: (offset: string, readings: number) =>
    `This freezer is ${offset} warmer than it is set to (${readings} ${readings === 1 ? "reading" : "readings"}).`,
  offsetOnce: "One reading says nothing of its scatter: take a few more.",
  offsetUse: "Use it by asking for the measured temperature, not the one on the dial.",
  learnAbout: "Take one measurement and one ingredient that is not well known:",
  line: "Measurement",
  ingredient: "Ingredient",
  thermometer: "Thermometer good to ±",
  factor: (item: string, factor: string) =>
    `The measurement is explained if what is dissolved in ${item} counts ${factor} times.`,
  factorBasis:
    "± from the thermometer alone; the other ingredients are taken as the catalogue has them.",
  noFactor: (item: string) => `No strength of ${item} explains this measurement.`,
  noMix: "The recipe of that line cannot be read any more.",
  apply: "Put the corrected ingredient on a new sheet of own ingredients",
  applied: (sheet: string) =>
    `The sheet “${sheet}” holds the corrected ingredient; choose it in the Bowl to have it count.`,
  ownSheet: "Own ingredients",
  brixTitle: "A fruit or syrup by its measured Brix",
  brixAbout: "Its sugars and acids keep their shares; its water makes room.",
  brixRead: "Refractometer reads",
  brixFactor: (item: string, factor: string) =>
    `What is dissolved in ${item} counts ${factor} times what the catalogue says.`,
  noBrix: (item: string) => `${item} cannot be made to read that.`,
  learntFrom: (date: string) => `learnt from a measured freezing point, ${date}`,
  brixFrom: (brix: string) => `scaled to a measured ${brix} °Bx`,
};
