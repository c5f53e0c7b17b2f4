import { useEffect, useState } from "preact/hooks";
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
  const [typed, setTyped] = useState(numbers.plain(valueC));
  useEffect(() => setTyped(numbers.plain(valueC)), [valueC, numbers]);
  const isTaken = (value: number | null): value is number =>
    value !== null && value >= COLDEST_C && value <= WARMEST_C;
  const wrong = !isTaken(numbers.read(typed));
  return (
    <label class="field">
      <span>{label}</span>
      <span class="with-unit">
        <input
          type="text"
          inputMode="text"
          size={6}
          value={typed}
          aria-invalid={wrong}
          onInput={(event) => {
            setTyped(event.currentTarget.value);
            const value = numbers.read(event.currentTarget.value);
            if (isTaken(value)) onChange(value);
          }}
        />
        °C
      </span>
      {wrong && <span class="fault">{words.temperatureWrong(typed, COLDEST_C, WARMEST_C)}</span>}
    </label>
  );
}
