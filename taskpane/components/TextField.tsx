interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly mostSigns?: number;
  readonly isWrong?: boolean;
  /** What is wrong with it, said beneath. */
  readonly fault?: string | null;
  readonly onChange: (text: string) => void;
}

/** A line of text. */
export const TextField = (props: TextFieldProps) => {
  const { label, value, mostSigns = 500, fault = null, isWrong = fault !== null, onChange } = props;
  return (
    <label class="field">
      <span>{label}</span>
      <input
        type="text"
        value={value}
        maxLength={mostSigns}
        aria-invalid={isWrong}
        onInput={(event) => onChange(event.currentTarget.value)}
      />
      {fault !== null && <span class="fault">{fault}</span>}
    </label>
  );
};
