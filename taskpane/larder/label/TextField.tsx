interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
}

/** A line of text. */
export const TextField = ({ label, value, onChange }: TextFieldProps) => (
  <label class="field">
    <span>{label}</span>
    <input type="text" value={value} onInput={(event) => onChange(event.currentTarget.value)} />
  </label>
);
