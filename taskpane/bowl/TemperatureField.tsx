import { NumberField } from "../components/NumberField";
import type { PaneContext } from "../view";

interface TemperatureFieldProps {
  readonly context: PaneContext;
  readonly label: string;
  readonly valueC: number;
  readonly onChange: (valueC: number) => void;
}

// The range in which the functions answer.
const COLDEST_C = -60;
const WARMEST_C = 40;

/** A temperature to type, decimal point or comma; what cannot be taken is said beneath. */
export function TemperatureField({ context, label, valueC, onChange }: TemperatureFieldProps) {
  const { words, numbers } = context;
  const [coldest, warmest] = [numbers.plain(COLDEST_C), numbers.plain(WARMEST_C)];
  return (
    <NumberField
      context={context}
      label={label}
      unit="°C"
      value={valueC}
      from={COLDEST_C}
      to={WARMEST_C}
      isRequired
      wrong={(typed) => words.temperatureWrong(typed, coldest, warmest)}
      onChange={(value) => {
        if (value !== null) onChange(value);
      }}
    />
  );
}
