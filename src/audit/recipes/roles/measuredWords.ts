/** Headings and labels of what was measured. English and German; common practice, no source. */
export const measuredWords =
  /\b(measured|gemessene?[rs]?|observed|readings?|messwerte?|messung|(?<!\b(freezer|cabinet|(kühl|gefrier|tiefkühl)?truhen|gefrier\w*)[- ]?)thermometer|read( off)?(?! (this|me|the|before))|(by|on|from) (the |a )?probe|abgelesen\w*|beobachtet|actually|tatsächlich\w*|found in|experimentel+\w*)\b|\b(exp|meas)\.|\blab (value|result)|laborwert|\bgem\./;
