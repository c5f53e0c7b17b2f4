import "./freezingCurve.css";

export interface ShareBar {
  readonly name: string;
  /** Of the whole, 0 to 1. */
  readonly fraction: number;
  readonly text: string;
  readonly kind: "held" | "ice";
}

interface ShareBarsProps {
  readonly title: string;
  readonly bars: readonly ShareBar[];
}

const WIDTH = 320;
const ROW = 34;

/** One bar under the other, each with its name and figure above it. */
export function ShareBars({ title, bars }: ShareBarsProps) {
  return (
    <svg
      class="curve"
      viewBox={`0 0 ${WIDTH} ${bars.length * ROW + 4}`}
      role="img"
      aria-label={title}
    >
      {bars.map(({ name, fraction, text, kind }, at) => (
        <g key={name} transform={`translate(0 ${at * ROW})`}>
          <text class="bar-name" y={12}>
            {name}
          </text>
          <text class="bar-name" x={WIDTH} y={12} text-anchor="end">
            {text}
          </text>
          <rect class="bar-ground" y={17} width={WIDTH} height={10} />
          <rect
            class={`bar-${kind}`}
            y={17}
            width={Math.max(0, Math.min(1, fraction)) * WIDTH}
            height={10}
          />
        </g>
      ))}
    </svg>
  );
}
