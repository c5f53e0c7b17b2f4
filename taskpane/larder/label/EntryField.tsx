import { useId } from "preact/hooks";
import { larderEntries } from "../entries";

interface EntryFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (name: string) => void;
}

/** The name of an entry of the larder, with those there are to choose from. */
export function EntryField({ label, value, onChange }: EntryFieldProps) {
  const list = useId();
  return (
    <label class="field">
      <span>{label}</span>
      <input
        type="text"
        list={list}
        value={value}
        onInput={(event) => onChange(event.currentTarget.value)}
      />
      <datalist id={list}>
        {larderEntries.map(({ item }) => (
          <option key={item.name} value={item.name} />
        ))}
      </datalist>
    </label>
  );
}
