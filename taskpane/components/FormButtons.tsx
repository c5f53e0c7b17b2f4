interface FormButtonsProps {
  /** What sending the form does. */
  readonly label: string;
  readonly closeLabel: string;
  readonly onClose: () => void;
}

/** The end of a form that unfolds: the button that sends it, and the one that closes it. */
export const FormButtons = ({ label, closeLabel, onClose }: FormButtonsProps) => (
  <div class="buttons">
    <button type="submit" class="primary">
      {label}
    </button>
    <button type="button" onClick={onClose}>
      {closeLabel}
    </button>
  </div>
);
