import { useState } from "preact/hooks";
import type { PaneContext } from "../view";

interface NumberFieldProps {
  readonly context: PaneContext;
  readonly label: string;
  readonly unit: string;
  /** Null while the field is empty. */
  readonly value: number | null;
  readonly from: number;
  readonly to: number;
  /** True when an empty field is wrong too: it then keeps its last value. */
  readonly isRequired?: boolean;
  /** The sentence for what cannot be taken, when there is a better one than the usual. */
  readonly wrong?: (typed: string) => string;
  readonly onChange: (value: number | null) => void;
}

/** A number to type, decimal point or comma, or nothing; what cannot be taken is said beneath. */
export function NumberField(props: NumberFieldProps) {
  const { context, label, unit, value, from, to, isRequired = false, onChange } = props;
  const { words, numbers } = context;
  const written = value === null ? "" : numbers.plain(value);
  // What was typed stays as it was typed for as long as the value is the one it meant. Told apart while drawing:
  // an effect would come after the next key, and take it back.
  const [entry, setEntry] = useState({ text: written, meant: value });
  const typed = entry.meant === value ? entry.text : written;
  const isTaken = (number: number | null): number is number =>
    number !== null && number >= from && number <= to;
  const isWrong = (isRequired || typed.trim() !== "") && !isTaken(numbers.read(typed));
  const sentence =
    props.wrong ?? (() => words.numberWrong(typed, numbers.plain(from), numbers.plain(to), unit));
  return (
    <label class="field">
      <span>{label}</span>
      <span class="with-unit">
        <input
          type="text"
          inputMode="text"
          size={6}
          value={typed}
          aria-invalid={isWrong}
          onInput={(event) => {
            const text = event.currentTarget.value;
            const number = numbers.read(text);
            const isEmpty = text.trim() === "" && !isRequired;
            const meant = isEmpty ? null : isTaken(number) ? number : value;
            setEntry({ text, meant });
            if (meant !== value) onChange(meant);
          }}
        />
        {unit}
      </span>
      {isWrong && <span class="fault">{sentence(typed)}</span>}
    </label>
  );
}
