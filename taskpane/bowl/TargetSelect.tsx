import type { Aim } from "../aims/aim";
import { useAims } from "../aims/useAim";
import type { PaneContext } from "../view";

interface TargetSelectProps {
  readonly context: PaneContext;
  readonly target: Aim | null;
  readonly onChange: (target: Aim | null) => void;
}

/** How it is meant to be served: one of the user's own targets, one of the catalogue's, or none. */
export function TargetSelect({ context, target, onChange }: TargetSelectProps) {
  const { words } = context;
  const aims = useAims(context);
  return (
    <label class="field">
      <span>{words.target.label}</span>
      <select
        value={target?.name ?? ""}
        onChange={(event) => {
          const name = event.currentTarget.value;
          onChange(aims.find((one) => one.name === name) ?? null);
        }}
      >
        <option value="">{words.target.none}</option>
        {aims.map(({ name, label }) => (
          <option key={name} value={name}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
}
