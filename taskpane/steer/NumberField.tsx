interface NumberFieldProps {
  /** For a screen reader: what it is and of what. */
  readonly label: string;
  /** The short word that is seen. */
  readonly shown: string;
  readonly value: string;
  readonly onInput: (typed: string) => void;
}

/** A number to type, decimal point or comma; it is read when the answer is asked for. */
export const NumberField = ({ label, shown, value, onInput }: NumberFieldProps) => (
  <label class="steer-number">
    <span aria-hidden="true">{shown}</span>
    <input
      type="text"
      inputMode="decimal"
      size={6}
      aria-label={label}
      value={value}
      onInput={(event) => onInput(event.currentTarget.value)}
    />
  </label>
);
