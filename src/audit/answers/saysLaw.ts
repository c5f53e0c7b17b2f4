/** "Kf × molality (K)", "i · Kf · b": up to its unit or to what else is said of it. */
const PRODUCT =
  /^([^([,;=:]+?)\s*(?:$|=|(?:[([,;:]|\bin\b)\s*(?:in )?(?:k|kelvin|°\s?c)(?!\p{L}))/iu;
const TIMES = /\s*[×·⋅∙*]\s*|\s+(?:x|times|mal)\s+/i;
const CONSTANT = /^(k_?f|1[.,]8\d+)$/i;
const FACTOR = /^(i|[1-4]|k_?f|1[.,]8\d+|b|m|molal\p{L}*|van\W?t\W?hoff.*)$/iu;
const STRENGTH = /^(b|m|molal\p{L}*)$/iu;

/** Whether a label is the law of the depression itself, written out: what stands there is no constant nor molality. */
export function saysLaw(label: string): boolean {
  const factors = (PRODUCT.exec(label.trim())?.[1] ?? "").split(TIMES);
  return (
    factors.every((factor) => FACTOR.test(factor)) &&
    factors.some((factor) => CONSTANT.test(factor)) &&
    factors.some((factor) => STRENGTH.test(factor))
  );
}
