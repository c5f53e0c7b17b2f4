import type { english } from "./english";

type Same<T> = T extends string
  ? string
  : T extends (...args: infer A) => string
    ? (...args: A) => string
    : { readonly [K in keyof T]: Same<T[K]> };

/** Every sentence of the pane. A language is one file; the compiler finds what it lacks. */
export type Words = Same<typeof english>;

/** The pane's words in a display language such as "de-AT"; English where there is no better. Only one is loaded. */
export const loadWords = async (language: string): Promise<Words> =>
  language.toLowerCase().startsWith("de")
    ? (await import(/* webpackChunkName: "german" */ "./german")).german
    : (await import(/* webpackChunkName: "english" */ "./english")).english;
