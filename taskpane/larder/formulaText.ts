import { NAMESPACE } from "../../src/worksheet/namespace";

const quoted = (text: string): string => `"${text.replace(/"/g, '""')}"`;

/** A call as one types it: =RIME.SOLUTE("sucrose","molar mass"). */
export const formulaText = (name: string, args: readonly string[]): string =>
  `=${NAMESPACE}.${name}(${args.map(quoted).join(",")})`;
