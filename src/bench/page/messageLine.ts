import type { FUniver } from "@univerjs/core/facade";
import { BuiltInUIPart } from "@univerjs/ui";
import { createElement } from "react";

/** Puts an element of the page right below the grid's formula bar, once that is there. */
export function placeBelowFormulaBar(api: FUniver, element: HTMLElement): void {
  const Place = () =>
    createElement("div", { ref: (node: HTMLElement | null) => node?.append(element) });
  const waiting = api.addEvent(api.Event.LifeCycleChanged, ({ stage }) => {
    if (stage < api.Enum.LifecycleStages.Rendered) return;
    waiting.dispose();
    api.registerUIPart(BuiltInUIPart.HEADER, Place);
  });
}

/** Shows the sentence that explains the selected cell's error, or that there is nothing to say. */
export function showMessage(line: HTMLElement, sentence: string | null): void {
  line.textContent = sentence ?? "";
  line.classList.toggle("trouble", sentence !== null);
}
