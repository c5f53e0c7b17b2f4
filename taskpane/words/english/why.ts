/** The words of the view that explains a cell. */
export const why = {
  outside: "To explain a cell, open the pane inside a spreadsheet.",
  none: (cell: string) =>
    `${cell} holds none of our functions. Select a cell whose formula has RIME. in it.`,
  which: "Which call",
  recipe: "Which recipe",
  recipeNumber: (number: number) => `Recipe ${number}`,
  answers: "It answers",
  moreCells: (rows: number, columns: number) => `a block of ${rows} × ${columns} cells`,
  refused: "It declines, since:",
  stale: (shown: string) =>
    `The cell shows ${shown}, which is not what its formula gives now: have the workbook recalculated.`,
  ideal: (ideal: string, real: string) =>
    `By the classroom’s ideal law it would be ${ideal}; really it is ${real}.`,
  arguments: "What it was given",
  blank: "left out",
  cells: (count: number) => `${count} cells`,
  unread: (part: string) =>
    `“${part}” is a calculation inside the formula: put it in a cell of its own, and the working can be shown.`,
  method: "How it is computed",
  board: "The working",
  boardMark: "Each line can be checked with a pocket calculator.",
  sources: "Sources",
  help: "Its help page",
  unknown: (name: string) => `RIME.${name} is no function of ours.`,
};
