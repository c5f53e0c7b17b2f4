import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Notice } from "../components/Notice";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";

interface LaterFormProps {
  readonly context: PaneContext;
  readonly onBack: () => void;
}

/** The form for an own ingredient, loaded when it is first wanted: few need it each day. */
export function LaterForm(props: LaterFormProps) {
  const { fault, run } = useHostTask(props.context);
  const [loaded, setLoaded] = useState<{ readonly Form: ComponentType<LaterFormProps> } | null>(
    null,
  );
  useEffect(
    () => void run(async () => setLoaded({ Form: (await import("./label/LabelForm")).LabelForm })),
    [run],
  );
  if (fault !== null) return <Notice tone="trouble">{fault}</Notice>;
  return loaded === null ? (
    <p class="quiet">{props.context.words.larder.loading}</p>
  ) : (
    <loaded.Form {...props} />
  );
}
