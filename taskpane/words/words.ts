import { english } from "./english";
import { german } from "./german";

type Same<T> = T extends string
  ? string
  : T extends (...args: infer A) => string
    ? (...args: A) => string
    : { readonly [K in keyof T]: Same<T[K]> };

/** Every sentence of the pane. A language is one file; the compiler finds what it lacks. */
export type Words = Same<typeof english>;

/** The pane's words in a display language such as "de-AT"; English where there is no better. */
export const wordsFor = (language: string): Words =>
  language.toLowerCase().startsWith("de") ? german : english;
