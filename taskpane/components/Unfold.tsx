import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import "../insert/insertPanel.css";

interface UnfoldProps {
  readonly label: string;
  /** With the place in it, for whoever hears the button alone. */
  readonly fullLabel?: string;
  readonly title: string;
  /** Told when the panel opens and closes. */
  readonly onOpen?: (isOpen: boolean) => void;
  readonly children: (close: () => void) => ComponentChildren;
}

/** A button that opens a panel beneath it. Esc closes it, and the focus goes in and comes back. */
export function Unfold({ label, fullLabel, title, onOpen, children }: UnfoldProps) {
  const [isOpen, setOpen] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const panel = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (isOpen) panel.current?.querySelector<HTMLElement>("input, select, button")?.focus();
  }, [isOpen]);
  const turn = (next: boolean) => {
    setOpen(next);
    onOpen?.(next);
  };
  const close = () => {
    turn(false);
    opener.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Escape" || !isOpen) return;
    event.stopPropagation();
    close();
  };
  return (
    <div class="unfold" onKeyDown={onKeyDown}>
      <button
        type="button"
        class="small"
        ref={opener}
        aria-label={fullLabel}
        aria-expanded={isOpen}
        onClick={() => turn(!isOpen)}
      >
        {label}
      </button>
      {isOpen && (
        <div class="insert" role="group" aria-label={title} ref={panel}>
          {children(close)}
        </div>
      )}
    </div>
  );
}
