import type { Aim } from "../aims/aim";
import type { PaneContext } from "../view";
import { TargetSelect } from "./TargetSelect";
import { TemperatureField } from "./TemperatureField";

interface ServingFieldsProps {
  readonly context: PaneContext;
  readonly target: Aim | null;
  readonly servingC: number;
  readonly onTarget: (target: Aim | null) => void;
  readonly onServing: (servingC: number) => void;
}

/** How it is meant to be served, and at what: choosing a target brings its temperature along. */
export function ServingFields(props: ServingFieldsProps) {
  const { context, target, servingC, onTarget, onServing } = props;
  return (
    <div class="fields">
      <TargetSelect
        context={context}
        target={target}
        onChange={(next) => {
          onTarget(next);
          if (next !== null) onServing(next.temperatureC);
        }}
      />
      <TemperatureField
        context={context}
        label={context.words.servedAt}
        valueC={servingC}
        onChange={onServing}
      />
    </div>
  );
}
