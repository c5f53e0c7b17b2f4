import { goOnUnless } from "../office/cancelled";

const SLICE_MS = 30; // then the pane may draw and answer a key

const breath = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** Drives work that stops between its steps: the pane draws in between, and the work can be cancelled. */
export async function inSlices<Step, Result>(
  steps: Generator<Step, Result, undefined>,
  onStep: (step: Step) => void,
  signal: AbortSignal,
): Promise<Result> {
  await breath(); // what was announced is drawn before the first step
  let since = performance.now();
  for (;;) {
    goOnUnless(signal);
    const next = steps.next();
    if (next.done === true) return next.value;
    if (performance.now() - since > SLICE_MS) {
      onStep(next.value);
      await breath();
      since = performance.now();
    }
  }
}
