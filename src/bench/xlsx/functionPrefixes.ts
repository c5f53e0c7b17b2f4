import { NAMESPACE } from "../../worksheet/namespace";

// Functions younger than the file format carry a mark in it; Excel shows #NAME? without.
const MARKED =
  `ACOT ACOTH ARABIC BASE BITAND BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH
 CHOOSECOLS CHOOSEROWS COMBINA CONCAT COT COTH CSC CSCH DAYS DECIMAL DROP EXPAND FLOOR.MATH FORMULATEXT
 HSTACK IFNA IFS IMCOSH IMSINH ISFORMULA ISOMITTED ISOWEEKNUM LAMBDA LET MAKEARRAY MAP MAXIFS MINIFS
 MUNIT NUMBERVALUE PDURATION RANDARRAY REDUCE RRI SCAN SEC SECH SEQUENCE SHEET SHEETS SORTBY SWITCH TAKE
 TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VSTACK WRAPCOLS WRAPROWS
 XLOOKUP XMATCH XOR`.split(/\s+/);
const MARKED_TWICE = ["FILTER", "SORT"];

const marked = new Set(MARKED);
const markedTwice = new Set(MARKED_TWICE);
const CALL = /("(?:[^"]|"")*"|'(?:[^']|'')*')|(?<![\w.])([A-Z][A-Z0-9.]*)(?=\()/gi;

function inFile(name: string): string {
  const upper = name.toUpperCase();
  if (upper.startsWith(`${NAMESPACE}.`)) return `_xldudf_${upper.replaceAll(".", "_")}`;
  if (marked.has(upper)) return `_xlfn.${upper}`;
  return markedTwice.has(upper) ? `_xlfn._xlws.${upper}` : name;
}

/**
 * A formula as an .xlsx file holds it: an add-in's function NAMESPACE.NAME as _xldudf_NAMESPACE_NAME, newer
 * functions with their mark. The opposite of `withPlainFunctionNames`.
 */
export const withFileFunctionNames = (formula: string): string =>
  formula.replace(CALL, (token, quoted?: string, name?: string) =>
    quoted !== undefined || name === undefined ? token : inFile(name),
  );

/** Whether a formula calls a function of ours. */
export const callsOurs = (formula: string): boolean =>
  new RegExp(`\\b${NAMESPACE}\\.[A-Z]`, "i").test(formula.replace(/"(?:[^"]|"")*"/g, ""));
