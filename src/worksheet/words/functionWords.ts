/** What the user reads of one function: its summary, and a description of every argument by its name. */
export interface FunctionWords {
  readonly summary: string;
  readonly parameters: Readonly<Record<string, string>>;
}

/** The words of a language by the functions' names. English stands in the function objects themselves. */
export type WordsOfFunctions = Readonly<Record<string, FunctionWords>>;
