import { useRef } from "preact/hooks";
import type { PaneContext } from "../view";
import { InsertContents } from "./InsertContents";
import type { InsertOffer } from "./insertOffer";
import "./insertPanel.css";

interface InsertPanelProps {
  readonly context: PaneContext;
  /** What is being inserted, for the panel's name. */
  readonly title: string;
  /** At least one; the first is chosen. */
  readonly offers: readonly InsertOffer[];
  readonly onClose: () => void;
}

/** The insertion in a panel of its own, where the button that opens it stands elsewhere. */
export function InsertPanel({ context, title, offers, onClose }: InsertPanelProps) {
  const opener = useRef(document.activeElement);
  const close = () => {
    // Back to where one came from, not to the top of the page.
    if (opener.current instanceof HTMLElement) opener.current.focus();
    onClose();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return;
    event.stopPropagation(); // it closes the panel, not what lies around it
    close();
  };
  const name = context.words.insert.title(title);
  return (
    <div class="insert" role="group" aria-label={name} onKeyDown={onKeyDown}>
      <InsertContents context={context} offers={offers} onClose={close} />
    </div>
  );
}
