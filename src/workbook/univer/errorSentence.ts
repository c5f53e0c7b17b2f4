const SENTENCES: Readonly<Record<string, string>> = {
  "#DIV/0!": "A number is divided by zero or by an empty cell.",
  "#N/A": "A value is not available.",
  "#NAME?": "The formula contains a name or a function that is not known.",
  "#NULL!": "Two ranges do not overlap.",
  "#NUM!": "A number lies outside what can be calculated.",
  "#REF!": "The formula refers to a cell that does not exist.",
  "#SPILL!": "The answer does not fit: the cells it would fill are not empty.",
  "#VALUE!": "A value is of a kind that cannot be calculated with.",
  "#CALC!": "The formula gives something that is no value.",
};

/** What an error of the spreadsheet itself means, in one sentence. */
export const errorSentence = (error: string): string =>
  SENTENCES[error] ?? `The formula gives the error ${error}.`;
