const plural = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

interface Counts {
  readonly sheets: number;
  readonly recipes: number;
  readonly errors: number;
  readonly warnings: number;
  readonly notes: number;
  readonly accepted: number;
}

/** The words of the view that reads the workbook through. */
export const readThrough = {
  about:
    "Reads every sheet and lists what would make an answer wrong. Reading changes nothing; what is written is shown before.",
  start: "Read the workbook",
  again: "Read it again",
  cancel: "Stop",
  cancelled: "Stopped; nothing was changed.",
  starts: "Reading the workbook.",
  sheets: (done: number, total: number) => `Sheet ${done + 1} of ${total}…`,
  checks: "Checking…",
  checking: (done: number, total: number) => `Checking, step ${done} of ${total}…`,
  result: (count: number) =>
    count === 0 ? "Nothing found." : plural(count, "finding", "findings") + ".",
  values: {
    automatic: "Formulas count with the values the spreadsheet shows; none was calculated twice.",
    manual:
      "The workbook is set to manual calculation: its values may be older than its amounts. Press F9, then read it again.",
    "automatic except tables":
      "The workbook does not calculate its data tables by itself: their values may be old. Press F9, then read it again.",
  },
  recipes: (count: number) => `What was read as a recipe (${count})`,
  noRecipes: "No recipe was found: a block needs a column of names and one of amounts.",
  severityNames: { error: "wrong", warning: "doubtful", note: "worth knowing" },
  severities: {
    error: (count: number) => `Wrong (${count})`,
    warning: (count: number) => `Doubtful (${count})`,
    note: (count: number) => `Worth knowing (${count})`,
  },
  filter: "Show",
  allHidden: "All findings are hidden: switch a kind on again.",
  more: (count: number) => `Show more (${count} left)`,
  goTo: (place: string) => `Go to ${place}`,
  effect: (quantity: string, from: string, to: string) => `${quantity}: ${from} → ${to}`,
  noEffect: "Changes no answer.",
  fix: (fix: string) => `What helps: ${fix}`,

  mend: {
    open: "Mend…",
    openFor: (place: string) => `Mend: ${place}`,
    title: (place: string) => `Mending ${place}`,
    about: "These cells would be written, each only if it still holds what stands here:",
    cell: "Cell",
    now: "Now",
    then: "Then",
    blank: "blank",
    format: "number format: General, in place of text",
    write: "Write",
    written: (cells: string) => `Written and read again: ${cells}.`,
    left: (cells: string) =>
      `Left alone, since changed meanwhile or not accepted by the cell: ${cells}.`,
    undo: "Write the old contents back",
    undone: (cells: string) => `Written back: ${cells}.`,
    hostUndo: "The spreadsheet’s own undo takes it back, too.",
    stale: "Cells were written since this reading: read it again.",
  },

  accept: {
    open: "Accept…",
    openFor: (place: string) => `Accept: ${place}`,
    title: (place: string) => `Accepting the finding at ${place}`,
    reason: "Why it may stay",
    empty: "Give a reason: it stands in later reports.",
    accept: "Accept it",
    done: "Accepted.",
    list: (count: number) => `Accepted (${count})`,
    because: (reason: string) => `Accepted: ${reason}`,
    withdraw: "Count it again",
    withdrawFor: (place: string) => `Count it again: ${place}`,
    withdrawn: "It counts again.",
    stale: (reason: string, why: string) => `Accepted once (“${reason}”). ${why}`,
    forget: "Forget",
  },
  acceptanceSheet: {
    name: "Accepted findings",
    headers: ["Mark", "Why it may stay", "Place", "Finding", "Date"],
    about: "What you accepted is not kept in the workbook yet; it would get a sheet for it.",
    aboutUpdate: "What you accepted differs from what the workbook keeps.",
  },
  correct: {
    open: "Read it differently…",
    openFor: (place: string) => `Read it differently: ${place}`,
    title: (place: string) => `How to read ${place}`,
    missed: "A recipe was missed…",
    missedTitle: "Where a recipe stands",
    place: "Cells, headers included, as Sheet!A1:C9",
    selection: "Take the selected cells",
    recipe: "What stands there",
    kinds: {
      down: "a recipe, names in a column",
      across: "recipes, names in a row",
      none: "no recipe",
    },
    names: { down: "Column of the names (A)", across: "Row of the names (1)" },
    amounts: { down: "Columns of the amounts (B or B, D:F)", across: "Rows of the amounts (2:9)" },
    unit: "Unit of the amounts",
    asWritten: "as the sheet says",
    blank: "What is left blank is looked for.",
    read: "Read it like this",
    said: (count: number) => `What you said of recipes (${count})`,
    takeBack: "Take back",
    takeBackFor: (place: string) => `Take back: ${place}`,
  },
  correctionSheet: {
    name: "What is a recipe",
    headers: ["Sheet", "Cells", "What stands there", "Names", "Amounts", "Unit", "First row"],
    about: "What you said of recipes is not kept in the workbook yet; it would get a sheet for it.",
    aboutUpdate: "What you said of recipes differs from what the workbook keeps.",
  },
  keep: {
    add: "Keep in the workbook",
    update: (sheet: string) => `Bring “${sheet}” up to date`,
    added: (sheet: string) => `Kept on the new sheet “${sheet}”; the next reading knows it.`,
    updated: (sheet: string) => `“${sheet}” is up to date.`,
    changed: (sheet: string) => `“${sheet}” changed meanwhile; nothing was written: try again.`,
    notOurs: (sheet: string) =>
      `“${sheet}” no longer holds what was kept there; nothing was written: read the workbook again.`,
  },

  reportSheet: {
    name: "Read-through",
    add: "Report on a new sheet",
    added: (sheet: string) => `Written on the new sheet “${sheet}”.`,
    title: (date: string) => `Read-through of ${date}`,
    summary: ({ sheets, recipes, errors, warnings, notes, accepted }: Counts) =>
      `${plural(sheets, "sheet", "sheets")}, ${plural(recipes, "recipe", "recipes")}: ${errors} wrong, ${warnings} doubtful, ${notes} worth knowing, ${accepted} accepted.`,
    findingHeaders: [
      ...["Kind", "Sheet", "Cell", "Finding", "What it changes", "From", "To", "Unit"],
      ...["What helps", "Accepted, since"],
    ],
    recipeHeaders: ["Sheet", "Cells", "Recipes", "What was taken for what"],
    nothingChanged: "The reading itself changed nothing in the workbook.",
  },
  page: {
    save: "Save as a page",
    workbook: "the open workbook",
    saved: (file: string) => `Saved as ${file}: to print, open it in the browser.`,
  },
};
