import type { curveGeometry } from "./curveGeometry";
import type { CurveMark } from "./FreezingCurve";

interface CurvePointProps {
  readonly geometry: ReturnType<typeof curveGeometry>;
  readonly mark: CurveMark;
  readonly text: string;
  /** True where a target's gate stands: the text then keeps clear of its bars. */
  readonly besideGate: boolean;
  /** To which side the text leans, so that it keeps clear of a mark close by. */
  readonly anchor: "start" | "middle" | "end";
}

const NEAR_TOP = 0.85;

/** A point on the curve with its share beside it. */
export function CurvePoint({ geometry, mark, text, besideGate, anchor }: CurvePointProps) {
  const { temperatureC, fraction } = mark;
  const above = fraction > NEAR_TOP ? 16 : -8;
  return (
    <g
      class="curve-mark"
      transform={`translate(${geometry.x(temperatureC)} ${geometry.y(fraction)})`}
    >
      <circle r="4" />
      {besideGate ? (
        <text x={-11} y={4} text-anchor="end">
          {text}
        </text>
      ) : (
        <text y={above} text-anchor={anchor}>
          {text}
        </text>
      )}
    </g>
  );
}
