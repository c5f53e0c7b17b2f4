import type { ComponentChildren } from "preact";

interface FormButtonsProps {
  /** What the first button does. */
  readonly label: string;
  readonly closeLabel: string;
  /** What is done on a click; without it the button sends the form that it stands in. */
  readonly onDo?: () => void;
  /** False while it cannot be done: not disabled, or it would let go of the focus once it has been. */
  readonly isReady?: boolean;
  readonly onClose: () => void;
  /** Further buttons between the two. */
  readonly children?: ComponentChildren;
}

/** The end of what unfolds: the button that does it, and the one that closes it. */
export const FormButtons = (props: FormButtonsProps) => {
  const { label, closeLabel, onDo, isReady = true, onClose, children } = props;
  return (
    <div class="buttons">
      <button
        type={onDo === undefined ? "submit" : "button"}
        class="primary"
        aria-disabled={!isReady}
        onClick={() => isReady && onDo?.()}
      >
        {label}
      </button>
      {children}
      <button type="button" onClick={onClose}>
        {closeLabel}
      </button>
    </div>
  );
};
