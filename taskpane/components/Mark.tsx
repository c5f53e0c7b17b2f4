/** The icon in small: a freezing curve falling across a bar on its stick. */
export function Mark() {
  return (
    <svg class="mark" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <path class="mark-stick" d="M8 12v3" />
      <path class="mark-bar" d="M3 4a3 3 0 0 1 3-3h4a3 3 0 0 1 3 3v8H3Z" />
      <path class="mark-curve" d="M3 4.5c3.5 0 4.5 1 5.5 2.800s2 3 4.5 3.200" />
    </svg>
  );
}
