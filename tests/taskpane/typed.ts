import type { BlockValue } from "../../taskpane/host";

/** What a cell makes of what is written into it: a text may become a number; an apostrophe keeps it a text. */
export function typed(content: BlockValue, format?: string): BlockValue {
  if (typeof content === "string" && content.startsWith("'")) return content.slice(1);
  if (format === "@") return String(content);
  return typeof content === "string" && content.trim() !== "" && !isNaN(Number(content))
    ? Number(content)
    : content;
}
