import { linearScale } from "./linearScale";
import "./freezingCurve.css";

export interface MoverBar {
  readonly name: string;
  readonly less: number;
  readonly more: number;
  readonly text: string;
}

interface MoverBarsProps {
  readonly title: string;
  readonly now: number;
  readonly nowText: string;
  readonly bars: readonly MoverBar[];
}

const WIDTH = 320;
const ROW = 34;
const TOP = 18;

/** How far each ingredient moves the answer to either side: hollow for a tenth less, filled for a tenth more. */
export function MoverBars({ title, now, nowText, bars }: MoverBarsProps) {
  const reach = Math.max(
    1e-9,
    ...bars.flatMap(({ less, more }) => [Math.abs(less - now), Math.abs(more - now)]),
  );
  const x = linearScale([now - reach, now + reach], [6, WIDTH - 6]);
  const bar = (to: number, kind: string) => (
    <rect
      class={`bar-${kind}`}
      x={Math.min(x(now), x(to))}
      y={17}
      width={Math.max(0.5, Math.abs(x(to) - x(now)))}
      height={10}
    />
  );
  const height = TOP + bars.length * ROW + 4;
  return (
    <svg class="curve" viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={title}>
      <text class="bar-name" x={x(now)} y={11} text-anchor="middle">
        {nowText}
      </text>
      {bars.map(({ name, less, more, text }, at) => (
        <g key={name} transform={`translate(0 ${TOP + at * ROW})`}>
          <text class="bar-name" y={12}>
            {name}
          </text>
          <text class="bar-name" x={WIDTH} y={12} text-anchor="end">
            {text}
          </text>
          {bar(less, "less")}
          {bar(more, "more")}
        </g>
      ))}
      <line class="bar-now" x1={x(now)} x2={x(now)} y1={TOP} y2={height} />
    </svg>
  );
}
