import { fireEvent, render, screen } from "@testing-library/preact";
import { larder } from "../../../taskpane/views/larder";
import type { SpreadsheetHost } from "../../../taskpane/host";
import { paneContext } from "../paneContext";

const { Content: Larder } = larder;

/** Opens the larder; answers what a screen reader is told from then on. */
export function openLarder(host: SpreadsheetHost | null, language = "en"): string[] {
  const { context, said } = paneContext(host, language);
  render(<Larder context={context} active />);
  return said;
}

/** Searches for a name, and opens the hit that is called so. */
export function openEntry(name: string): void {
  fireEvent.input(screen.getByRole("searchbox"), { target: { value: name } });
  const hit = screen
    .getAllByRole("button")
    .find((button) => button.querySelector(".hit-name")?.textContent === name);
  fireEvent.click(hit!);
}

/** Types into the field whose label begins so; the unit behind a number is part of its label. */
export const type = (label: string, value: string) =>
  fireEvent.input(screen.getByLabelText(new RegExp(`^${label}`)), { target: { value } });

export const press = (name: string | RegExp) =>
  fireEvent.click(screen.getByRole("button", { name }));
