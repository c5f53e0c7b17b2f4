/** Shows sentences above the grid until the next ones come, or nothing. */
export function showNotice(line: HTMLElement, sentences: readonly string[]): void {
  line.textContent = sentences.join("\n");
  line.hidden = sentences.length === 0;
}
