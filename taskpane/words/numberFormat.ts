import { together } from "./together";

/** Numbers as the display language writes them, and read as it writes them. */
export interface NumberFormat {
  /** So many decimals, always. */
  readonly fixed: (value: number, decimals: number) => string;
  /** Up to six significant digits. */
  readonly plain: (value: number) => string;
  /** An uncertainty: two significant digits. */
  readonly band: (uncertainty: number) => string;
  /** A fraction as per cent. */
  readonly percent: (fraction: number, decimals?: number) => string;
  /** A value to the digits its uncertainty leaves, with the uncertainty, on one line: "−2.31 ± 0.05 °C". */
  readonly withBand: (value: number, uncertainty: number, unit: string) => string;
  /**
   * A fraction as per cent with its uncertainty, a fraction too: "68.2 ± 1.5 %"; without one where there is none.
   * Where the two would reach below nothing or above all, from where to where it may be: "0–3 %".
   */
  readonly share: (fraction: number, uncertainty: number | null) => string;
  /** A number as someone types it, with a decimal point or comma; null when it is none. */
  readonly read: (text: string) => number | null;
}

const MINUS = "\u2212"; // the true minus sign lines up with plus and digits
const TO = "\u2060–\u2060"; // an en dash at which no line ends

/** Decimals that leave an uncertainty two digits when it begins with 1, else one. */
export function decimalsFor(uncertainty: number): number {
  if (!(uncertainty > 0)) return 2;
  const exponent = Math.floor(Math.log10(uncertainty));
  const leading = uncertainty / 10 ** exponent;
  return Math.min(6, Math.max(0, (leading < 2 ? 1 : 0) - exponent));
}

function readNumber(text: string): number | null {
  const plain = text
    .trim()
    .replace(/[\u2212\u2013]/g, "-")
    .replace(",", ".");
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

export function numberFormat(language: string): NumberFormat {
  const formats = new Map<string, Intl.NumberFormat>(); // making one takes longer than a page of numbers
  const formatFor = (options: Intl.NumberFormatOptions): Intl.NumberFormat => {
    const key = JSON.stringify(options);
    const usual = { useGrouping: false, signDisplay: "negative" } as const;
    const format = formats.get(key) ?? new Intl.NumberFormat(language, { ...usual, ...options });
    formats.set(key, format);
    return format;
  };
  const write = (value: number, options: Intl.NumberFormatOptions) =>
    // Adding 0 turns a negative zero, also one made by rounding, into zero.
    formatFor(options)
      .format(value + 0)
      .replace("-", MINUS);
  const fixed = (value: number, decimals: number) =>
    write(value, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  const percent = (fraction: number, decimals = 0) => `${fixed(fraction * 100, decimals)}\u202f%`;
  const withBand = (value: number, uncertainty: number, unit: string) => {
    const decimals = decimalsFor(uncertainty);
    return `${together(fixed(value, decimals), "±", fixed(uncertainty, decimals))}\u202f${unit}`;
  };
  const share = (fraction: number, uncertainty: number | null) => {
    // Nothing frozen yet, or nothing dissolved, is known for certain.
    if (uncertainty === null || uncertainty === 0) return percent(fraction, 1);
    const [least, most] = [fraction - uncertainty, fraction + uncertainty];
    if (least >= 0 && most <= 1) return withBand(fraction * 100, uncertainty * 100, "%");
    const decimals = decimalsFor(uncertainty * 100);
    const from = least <= 0 ? "0" : fixed(least * 100, decimals);
    return `${from}${TO}${most >= 1 ? "100" : fixed(most * 100, decimals)}\u202f%`;
  };
  return {
    fixed,
    plain: (value) => write(value, { maximumSignificantDigits: 6 }),
    band: (uncertainty) => write(uncertainty, { maximumSignificantDigits: 2 }),
    percent,
    withBand,
    share,
    read: readNumber,
  };
}
