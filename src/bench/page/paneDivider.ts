const LEAST_PX = 280;
const STEP_PX = 20;

/** Lets the divider set the pane's width, by pointer or arrow keys, and a button fold the pane away. */
export function setUpPaneDivider(
  divider: HTMLElement,
  pane: HTMLElement,
  toggle: HTMLElement,
): void {
  const setWidth = (widthPx: number): void => {
    const mostPx = window.innerWidth / 2;
    pane.style.width = `${Math.round(Math.min(Math.max(widthPx, LEAST_PX), mostPx))}px`;
  };
  divider.addEventListener("pointerdown", (event) => {
    divider.setPointerCapture(event.pointerId);
    pane.style.pointerEvents = "none"; // else the frame swallows the pointer's moves
  });
  divider.addEventListener("pointermove", (event) => {
    if (divider.hasPointerCapture(event.pointerId)) setWidth(window.innerWidth - event.clientX);
  });
  divider.addEventListener("lostpointercapture", () => {
    pane.style.pointerEvents = "";
  });
  divider.addEventListener("keydown", (event) => {
    if (event.key === "ArrowLeft") setWidth(pane.offsetWidth + STEP_PX);
    if (event.key === "ArrowRight") setWidth(pane.offsetWidth - STEP_PX);
  });
  toggle.addEventListener("click", () => {
    const hide = !pane.hidden;
    pane.hidden = hide;
    divider.hidden = hide;
    toggle.setAttribute("aria-expanded", String(!hide));
  });
}
