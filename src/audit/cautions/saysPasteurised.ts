const PASTEURISED = /(?<!un|un-|not |nicht |non-?)(pasteuri[sz]|\bpast\.)/i;

/** Whether words say that something is pasteurised: "egg yolk, pasteurised", "Eigelb (past.)", but not "unpasteurised". */
export const saysPasteurised = (words: string): boolean => PASTEURISED.test(words);
