import type { PaneContext } from "../view";
import { NumberField } from "./NumberField";

interface GramFieldsProps {
  readonly context: PaneContext;
  readonly amounts: readonly { readonly name: string; readonly grams: number | null }[];
  readonly mostGrams: number;
  readonly onChange: (name: string, grams: number | null) => void;
}

/** Grams of each of several, side by side where there is room. */
export const GramFields = ({ context, amounts, mostGrams, onChange }: GramFieldsProps) => (
  <div class="fields even">
    {amounts.map(({ name, grams }) => (
      <NumberField
        key={name}
        context={context}
        label={name}
        unit="g"
        from={0}
        to={mostGrams}
        value={grams}
        onChange={(value) => onChange(name, value)}
      />
    ))}
  </div>
);
