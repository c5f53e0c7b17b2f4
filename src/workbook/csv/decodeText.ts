import { badInput } from "../../foundation/problem";
import type { Result } from "../../foundation/result";

export interface DecodedText {
  readonly text: string;
  /** What had to be assumed, in one sentence, or null. */
  readonly assumed: string | null;
}

/** The encodings that are known by a byte order mark; the decoder takes the mark off. */
function markedEncoding([first, second, third]: Uint8Array): string | null {
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  return first === 0xef && second === 0xbb && third === 0xbf ? "utf-8" : null;
}

/** The text of a file: by its byte order mark, else UTF-8, else Windows-1252, which is said. */
export function decodeText(bytes: Uint8Array): Result<DecodedText> {
  const marked = markedEncoding(bytes);
  if (marked !== null) return { text: new TextDecoder(marked).decode(bytes), assumed: null };
  if (bytes.includes(0)) {
    return badInput("The file holds bytes that no text has: it is not a CSV file.");
  }
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), assumed: null };
  } catch {
    const assumed = "The file is not in UTF-8; its letters were read as Windows-1252.";
    return { text: new TextDecoder("windows-1252").decode(bytes), assumed };
  }
}
