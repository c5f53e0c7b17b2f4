import type { ComponentChildren } from "preact";

interface CheckProps {
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly children: ComponentChildren;
}

/** What may be ticked. */
export const Check = ({ checked, onChange, children }: CheckProps) => (
  <label class="check">
    <input
      type="checkbox"
      checked={checked}
      onChange={(event) => onChange(event.currentTarget.checked)}
    />
    {children}
  </label>
);
