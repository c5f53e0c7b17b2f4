import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import { sheetTexts } from "../recipes/sheetTexts";

/** How far off a sheet says that its own law may be: in K, or as a share of the depression. */
export type StatedTolerance = { readonly kelvin: number } | { readonly fraction: number };

/** "Good to ±0.3 K", "auf ±0,3 K genau", "Toleranz 0,4 K", "within 5 %", "Abweichung bis 0,2 K". */
const SAYS_TOLERANCE =
  /±|\+\/?-|\btoler|within|good to|accura|precis|\bgenau|genauigkeit|präzis|\b(off|out|wrong|right|correct|true|exact|differ\w*|deviat\w*|agrees?|errors?|gaps?|trust\w*|holds?) (?:\S+ ){0,5}?(by|to|below|under|of|than|is)\b|deviation|abweich|\bweich(t|en|e)\b.*\bab\b|höchstens|fehler|uncertaint|unsicher|margin|\b(away|adrift|apart|astray)\b|\d ?(?:k|kelvins?|°\s?c|degrees?|grad) (?:off|out|wrong|falsch)\b|\beither way\b|give or take|plus (?:or |oder )?minus|nach (?:oben|beiden)|entfernt|daneben|spielraum|\b(stimm(t|en)|pass(t|en)|trifft|treffen|gelten|gilt)\b.*\bauf\b|\b(?:auf|to) (?:about |etwa |rund |ca\.? |ungefähr )?\d+(?:[.,]\d+)? ?k(?:elvins?)?(?!\p{L}| ?[·*/])/iu;
const KELVINS =
  /(\d+(?:[.,]\d+)?)\s*(?:k(?:elvins?)?(?!\p{L}| ?[·*/])|°\s?c|degrees?\b|grad\b|deg\b|℃)/iu;
const PER_CENT = /(\d+(?:[.,]\d+)?)\s*(?:%|per ?cent|prozent)/i;
const ABOUT_LAW =
  /ideal|\blaw\b|gesetz|freez|gefrier|formula|formel|depress|erniedrig|\brule\b|regel|calculat|rechn|\bk_?f\b|Δ ?t|estimate|näherung|approx/i;
/** What a law is off by: "misses the real value by no more than 0.2 K", "liegt nicht mehr als 0,2 K falsch". */
const BOUNDED =
  /\b(no(t)? more than|at (the )?most|less than|nicht mehr als|weniger als|miss(es|ed)? [\p{L} ]+ by)\b|\bverfehl/iu;
/** To how many figures a number is shown promises nothing of the law. */
const ROUNDED = /\bround|gerundet|runde/i;
/** What thermometers and freezers are good to is another thing, unless it is said of a law. */
const ABOUT_DEVICE =
  /freezer|thermomet|probe\b|sensor|fridge|truhe|froster|kühl|fühler|balance|scale|waage|store[sd]?\b|lager|serve|servier/i;
const NAMES_LAW = /\bideal|\blaw\b|gesetz|formula|formel|\brule\b|\bregel\b|näherung|approxim/i;
const LABEL =
  /^(allowed |accepted |zulässige |erlaubte |max(imum|imale|\.)? )?(toler|deviation|abweichung|error|fehler|accuracy|genauigkeit|margin)/i;

const numberOf = (digits: string): number => Number(digits.replace(",", "."));

/** A number beside a label like "Tolerance (K)". */
function beside(sheet: WorkbookSheet, row: number, column: number): StatedTolerance | null {
  const text = textAt(sheet, row, column);
  if (!LABEL.test(text)) return null;
  for (const at of [column + 1, column + 2]) {
    const cell = sheet.cellAt(row, at);
    if (typeof cell?.value !== "number" || cell.value <= 0) continue;
    const isShare = /%/.test(cell.format ?? "");
    const words = `${text} ${textAt(sheet, row, at + 1)}`;
    if (isShare) return { fraction: cell.value };
    return /%/.test(words) ? { fraction: cell.value / 100 } : { kelvin: cell.value };
  }
  return null;
}

function inSentence(text: string): StatedTolerance | null {
  const isOfLaw = NAMES_LAW.test(text);
  const isSaid = SAYS_TOLERANCE.test(text) || (isOfLaw && BOUNDED.test(text));
  if (!isSaid || ROUNDED.test(text)) return null;
  if (ABOUT_DEVICE.test(text) && !isOfLaw) return null;
  const kelvins = KELVINS.exec(text)?.[1];
  if (kelvins !== undefined) return { kelvin: numberOf(kelvins) };
  const perCent = ABOUT_LAW.test(text) ? PER_CENT.exec(text)?.[1] : undefined;
  return perCent === undefined ? null : { fraction: numberOf(perCent) / 100 };
}

/** A sheet says it a few times, not line by line. */
const MOST_STATEMENTS = 100;

interface Statement {
  readonly row: number;
  readonly tolerance: StatedTolerance;
}

const known = new WeakMap<WorkbookSheet, readonly Statement[]>();

function read(sheet: WorkbookSheet): readonly Statement[] {
  const statements = [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column) => {
      const tolerance = inSentence(textAt(sheet, row, column)) ?? beside(sheet, row, column);
      return tolerance === null ? [] : [{ row, tolerance }];
    }),
  );
  const few = statements.slice(0, MOST_STATEMENTS);
  known.set(sheet, few);
  return few;
}

/** What a sheet says with every solution may stand above it or below it: the one that allows more. */
function looser(one: StatedTolerance, other: StatedTolerance): StatedTolerance {
  if ("kelvin" in one && "kelvin" in other) return one.kelvin < other.kelvin ? other : one;
  return "fraction" in one && "fraction" in other && one.fraction < other.fraction ? other : one;
}

/**
 * How far off a sheet says that its own law may be; null when it does not say. Where it says so several times, what
 * stands next to a row's answer counts.
 */
export function statedTolerance(sheet: WorkbookSheet, row: number): StatedTolerance | null {
  const said = known.get(sheet) ?? read(sheet);
  const above = said.findLast((one) => one.row <= row)?.tolerance;
  const below = said.find((one) => one.row >= row)?.tolerance;
  if (above === undefined || below === undefined) return below ?? above ?? null;
  return looser(below, above);
}
