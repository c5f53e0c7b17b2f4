import type { Words } from "../words/words";

const codeOf = (error: unknown): string => {
  // Office's errors may come from another frame: known by their field, not by their class.
  const code =
    typeof error === "object" && error !== null ? (error as { code?: unknown }).code : "";
  return typeof code === "string" ? code : "";
};

const messageOf = (error: unknown): string => {
  const message =
    typeof error === "object" && error !== null ? (error as { message?: unknown }).message : error;
  return typeof message === "string" && message !== "" ? message : "?";
};

/** What went wrong with the spreadsheet, in one sentence that says what to do about it. */
export function hostSentence(error: unknown, words: Words): string {
  const code = codeOf(error);
  const known = words.hostFaults as Readonly<Record<string, string>>;
  return known[code] ?? words.otherHostFault(messageOf(error).replace(/\.$/, ""));
}
