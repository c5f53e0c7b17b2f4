const VULGAR: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅕": 1 / 5,
  "⅙": 1 / 6,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};

/** An amount written as a fraction, "1 1/2", "3/4", "2½"; null for any other text, text numbers among them. */
export function readAmount(text: string): number | null {
  const signs = /^(\d{1,6})?\s*([½⅓⅔¼¾⅕⅙⅛⅜⅝⅞])$/u.exec(text.trim());
  if (signs) return Number(signs[1] ?? 0) + (VULGAR[signs[2] ?? ""] ?? 0);
  const written = /^(?:(\d{1,6})(?:\s+|\s*[-+]\s*))?(\d{1,4})\s*[/⁄]\s*(\d{1,4})$/u.exec(
    text.trim(),
  );
  if (written === null || Number(written[3]) === 0) return null;
  return Number(written[1] ?? 0) + Number(written[2]) / Number(written[3]);
}
