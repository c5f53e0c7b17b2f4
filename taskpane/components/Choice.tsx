interface ChoiceProps<Value extends string | number> {
  readonly label: string;
  readonly value: Value | null;
  readonly options: readonly { readonly value: Value; readonly label?: string }[];
  /** Offered first, for nothing chosen; absent where something always is. */
  readonly none?: string;
  readonly onChange: (value: Value) => void;
}

/** One of several, by a list that folds out. */
export function Choice<Value extends string | number>(props: ChoiceProps<Value>) {
  const { label, value, options, none, onChange } = props;
  return (
    <label class="field">
      <span>{label}</span>
      <select
        value={value ?? ""}
        onChange={(event) => {
          const chosen = options.find((each) => String(each.value) === event.currentTarget.value);
          if (chosen !== undefined) onChange(chosen.value);
        }}
      >
        {none !== undefined && <option value="">{none}</option>}
        {options.map((each) => (
          <option key={each.value} value={each.value}>
            {each.label ?? each.value}
          </option>
        ))}
      </select>
    </label>
  );
}
