import { SaxesParser } from "saxes";
import { badInput, type Problem } from "../../foundation/problem";
import type { Archive } from "./archive";
import { inflatePart } from "./inflatePart";
import { LIMITS } from "./limits";

const SLICE_LENGTH = 65536;

export type Attributes = Readonly<Record<string, string>>;

/** What a reader of one part wants to hear. Names come without prefix; a Problem stops the reading. */
export interface XmlReader {
  readonly open?: (name: string, attributes: Attributes) => Problem | null;
  /** `text` is all the text since the tag was opened, children's text left out of leaves' text. */
  readonly close?: (name: string, text: string) => Problem | null;
}

const withoutPrefix = (name: string): string => name.slice(name.indexOf(":") + 1);

/** The value of an attribute whatever its prefix ("r:id"), or undefined. */
export function prefixedAttribute(attributes: Attributes, localName: string): string | undefined {
  const key = Object.keys(attributes).find((name) => name.endsWith(`:${localName}`));
  return key === undefined ? undefined : attributes[key];
}

/** Whether an attribute says yes, in one of the two ways of xsd:boolean. */
export const isTrue = (value: string | undefined): boolean => value === "1" || value === "true";

/** UTF-16 is allowed by XML and known by its byte order mark; everything else is taken as UTF-8. */
function decoderFor(bytes: Uint8Array): TextDecoder {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le");
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be");
  return new TextDecoder();
}

/** Builds the parser and tells, after each piece, whether something was wrong with it. */
function listen(partName: string, reader: XmlReader) {
  const parser = new SaxesParser({ position: false, xmlns: false as const });
  const state: { problem: Problem | null } = { problem: null };
  const stopWith = (problem: Problem | null): void => {
    state.problem ??= problem;
  };
  let depth = 0;
  let text = "";
  parser.on("doctype", () =>
    stopWith(badInput(`The part "${partName}" declares a document type; such files are not read.`)),
  );
  parser.on("error", () =>
    stopWith(badInput(`The file is damaged: its part "${partName}" is not well-formed XML.`)),
  );
  parser.on("opentag", ({ name, attributes }) => {
    depth += 1;
    text = "";
    if (depth > LIMITS.xmlDepth) {
      stopWith(badInput(`The part "${partName}" is nested deeper than ${LIMITS.xmlDepth} levels.`));
    } else if (state.problem === null)
      stopWith(reader.open?.(withoutPrefix(name), attributes) ?? null);
  });
  const addText = (piece: string): void => {
    if (text.length < LIMITS.textLength) text += piece;
  };
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.on("closetag", ({ name }) => {
    depth -= 1;
    if (state.problem === null) stopWith(reader.close?.(withoutPrefix(name), text) ?? null);
    text = "";
  });
  return { parser, state };
}

/** Streams one part of the archive through a reader. A missing part is the caller's to judge. */
export function readXml(archive: Archive, partName: string, reader: XmlReader): Problem | null {
  const entry = archive.entries.get(partName.toLowerCase());
  if (entry === undefined)
    return badInput(`The file is damaged: its part "${partName}" is missing.`);
  const { parser, state } = listen(partName, reader);
  let decoder: TextDecoder | undefined;
  const problem = inflatePart(archive, entry, (bytes) => {
    decoder ??= decoderFor(bytes);
    const text = decoder.decode(bytes, { stream: true });
    // In slices, so that the parser is not fed megabytes after its first complaint.
    for (let at = 0; at < text.length && state.problem === null; at += SLICE_LENGTH) {
      parser.write(text.slice(at, at + SLICE_LENGTH));
    }
    return state.problem;
  });
  if (problem !== null) return problem;
  parser.close();
  return state.problem;
}
