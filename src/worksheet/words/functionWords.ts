/** What the user reads of one function: its summary, and a description of every argument by its name. */
export interface FunctionWords {
  readonly summary: string;
  readonly parameters: Readonly<Record<string, string>>;
}

/** What a language says of the functions. */
export interface LanguageOfFunctions {
  /** By the functions' names. English has none here: its words stand in the function objects themselves. */
  readonly functions: Readonly<Record<string, FunctionWords>>;
  /** Ends the description of an optional argument: what stands for it when it is left out. */
  readonly whenLeftOut: (value: string | number) => string;
}
