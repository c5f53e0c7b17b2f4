/** Takes a file dropped anywhere on the page; the hint shows while one is held over it. */
export function onFileDrop(hint: HTMLElement, take: (file: File) => void): void {
  const carriesFile = (event: DragEvent): boolean =>
    event.dataTransfer?.types.includes("Files") ?? false;
  window.addEventListener("dragover", (event) => {
    if (!carriesFile(event)) return;
    event.preventDefault();
    hint.hidden = false;
  });
  window.addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) hint.hidden = true;
  });
  window.addEventListener("drop", (event) => {
    if (!carriesFile(event)) return;
    event.preventDefault();
    event.stopPropagation();
    hint.hidden = true;
    const file = event.dataTransfer?.files[0];
    if (file !== undefined) take(file);
  });
}
