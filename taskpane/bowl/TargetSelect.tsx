import { servingTargets } from "../../src/catalogue/targets";
import type { ServingTarget } from "../../src/catalogue/target";
import type { PaneContext } from "../view";

interface TargetSelectProps {
  readonly context: PaneContext;
  readonly target: ServingTarget | null;
  readonly onChange: (target: ServingTarget | null) => void;
}

/** How it is meant to be served: one of the catalogue's targets, or none. */
export function TargetSelect({ context, target, onChange }: TargetSelectProps) {
  const { words } = context;
  return (
    <label class="field">
      <span>{words.target.label}</span>
      <select
        value={target?.name ?? ""}
        onChange={(event) => {
          const name = event.currentTarget.value;
          onChange(servingTargets.find((one) => one.name === name) ?? null);
        }}
      >
        <option value="">{words.target.none}</option>
        {servingTargets.map(({ name, aliases }) => (
          <option key={name} value={name}>
            {words.language === "de" ? (aliases.de[0] ?? name) : name}
          </option>
        ))}
      </select>
    </label>
  );
}
