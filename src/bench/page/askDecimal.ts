import type { DecimalMark } from "../../workbook/csv/decimalMark";

const MARKS: Readonly<Record<string, DecimalMark>> = { comma: ",", point: "." };

/**
 * Asks in the page, not over it, which decimal mark a file has; null when it is not to be opened, as by Esc. A
 * question that comes while another is open takes its place.
 */
export function askDecimal(form: HTMLFormElement, question: string): Promise<DecimalMark | null> {
  form.dispatchEvent(new Event("reset"));
  const text = form.querySelector("p");
  if (text !== null) text.textContent = question;
  const before = document.activeElement;
  form.hidden = false;
  form.querySelector("button")?.focus();
  return new Promise((resolve) => {
    const listening = new AbortController();
    const finish = (answer: DecimalMark | null): void => {
      listening.abort();
      form.hidden = true;
      if (before instanceof HTMLElement) before.focus();
      resolve(answer);
    };
    const { signal } = listening;
    form.addEventListener("reset", () => finish(null), { signal });
    form.addEventListener("keydown", ({ key }) => key === "Escape" && finish(null), { signal });
    form.addEventListener(
      "submit",
      (event) => {
        event.preventDefault();
        const { value } = event.submitter as HTMLButtonElement;
        finish(MARKS[value] ?? null);
      },
      { signal },
    );
  });
}
