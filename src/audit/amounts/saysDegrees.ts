const DEGREES = /°|º|\b(celsius|fahrenheit|kelvin|deg|grad)\b|[([,]\s*[cfk]\s*[)\]]?$/i;

/** Whether words, or a format, name degrees. */
export const saysDegrees = (text: string): boolean => DEGREES.test(text);
