import { formulaForFile } from "../../workbook/univer/formulaText";
import { NAMESPACE } from "../../worksheet/namespace";
import { withParameterMarks } from "./parameterMarks";

// Functions younger than the file format carry a mark in it ([MS-XLSX] 2.2.2); Excel shows #NAME? without.
const MARKED =
  `ACOT ACOTH AGGREGATE ANCHORARRAY ARABIC ARRAYTOTEXT BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV
 BITAND BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT
 CHISQ.INV CHISQ.INV.RT CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT
 COTH COVARIANCE.P COVARIANCE.S CSC CSCH DAYS DECIMAL DROP ENCODEURL ERF.PRECISE ERFC.PRECISE EXPAND
 EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FILTERXML FLOOR.MATH FLOOR.PRECISE FORECAST.ETS
 FORECAST.ETS.CONFINT FORECAST.ETS.SEASONALITY FORECAST.ETS.STAT FORECAST.LINEAR FORMULATEXT GAMMA
 GAMMA.DIST GAMMA.INV GAMMALN.PRECISE GAUSS HSTACK HYPGEOM.DIST IFNA IFS IMCOSH IMCOT IMCSC IMCSCH IMSEC
 IMSECH IMSINH IMTAN ISFORMULA ISOMITTED ISOWEEKNUM LAMBDA LET LOGNORM.DIST LOGNORM.INV MAKEARRAY MAP
 MAXIFS MINIFS MODE.MULT MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV
 NUMBERVALUE PDURATION PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI
 POISSON.DIST QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ REDUCE RRI SCAN SEC SECH SEQUENCE SHEET
 SHEETS SINGLE SKEW.P SORTBY STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TAKE
 TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VALUETOTEXT VAR.P VAR.S VSTACK
 WEBSERVICE WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST`.split(/\s+/);
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
 * functions with their mark, A1# as a function. The opposite of `withPlainFunctionNames`.
 */
export const withFileFunctionNames = (formula: string): string =>
  withParameterMarks(formulaForFile(formula)).replace(
    CALL,
    (token, quoted?: string, name?: string) =>
      quoted !== undefined || name === undefined ? token : inFile(name),
  );

/** Whether a formula calls a function of ours. */
export const callsOurs = (formula: string): boolean =>
  new RegExp(`\\b${NAMESPACE}\\.[A-Z]`, "i").test(formula.replace(/"(?:[^"]|"")*"/g, ""));
