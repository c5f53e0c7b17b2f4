import type { Words } from "../words/words";
import { HalfWritten, type WrittenState } from "./halfWritten";

const codeOf = (error: unknown): string => {
  // Office's errors may come from another frame: known by their field, not by their class.
  const code =
    typeof error === "object" && error !== null ? (error as { code?: unknown }).code : "";
  return typeof code === "string" ? code : "";
};

/** True when what was asked for is no longer in the workbook. */
export const isGone = (error: unknown): boolean => codeOf(error) === "ItemNotFound";

const messageOf = (error: unknown): string => {
  const message =
    typeof error === "object" && error !== null ? (error as { message?: unknown }).message : error;
  return typeof message === "string" && message !== "" ? message : "?";
};

const MOST_PLACES = 12; // more than that is no sentence any more

const listed = (places: readonly string[]): string =>
  places.length <= MOST_PLACES
    ? places.join(", ")
    : `${places.slice(0, MOST_PLACES).join(", ")} … (${places.length})`;

function halfWrittenSentence(state: WrittenState, { halfWritten }: Words): string {
  if (state.kind === "sheet") return halfWritten.sheet(state.name);
  if (state.kind === "cells") {
    return halfWritten.cells(listed(state.written), listed(state.missing));
  }
  return halfWritten[state.kind](listed(state.places));
}

/** What went wrong with the spreadsheet, in one sentence that says what to do about it. */
export function hostSentence(error: unknown, words: Words): string {
  if (error instanceof HalfWritten) return halfWrittenSentence(error.state, words);
  const code = codeOf(error);
  const known = words.hostFaults as Readonly<Record<string, string>>;
  return (
    known[code] ?? words.otherHostFault(messageOf(error).replace(/\s+/g, " ").replace(/\.$/, ""))
  );
}
