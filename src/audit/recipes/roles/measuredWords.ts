import { temperatureWords } from "./temperatureWords";
import type { Words } from "./words";

const MEASURED =
  /\b(measured|gemessene?[rs]?|observed|readings?|messwerte?|messung|(?<!\b(freezer|cabinet|(kühl|gefrier|tiefkühl)?truhen|gefrier\w*)[- ]?)thermometer|read( off)?(?! (this|me|the|before))|(by|on|from) (the |a )?probe|abgelesen\w*|beobachtet\w*|actually|tatsächlich\w*|found in|experiment(al|ell\w*)|cryoscope|kryoskop|osmometer)\b|\b(exp|meas)\.|\blab (value|result)|laborwert|\bgem\.|[([](im )?versuch[)\]]$/;

/**
 * Headings and labels of what was measured; a freezer's own temperature is where the ice is kept, read off or not.
 * English and German; common practice, no source.
 */
export const measuredWords: Words = {
  test: (plain) => MEASURED.test(plain) && !temperatureWords.ofFreezer.test(plain),
};
