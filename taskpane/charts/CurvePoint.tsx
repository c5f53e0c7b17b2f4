import type { curveGeometry } from "./curveGeometry";
import type { CurveMark } from "./FreezingCurve";

interface CurvePointProps {
  readonly geometry: ReturnType<typeof curveGeometry>;
  readonly mark: CurveMark;
  readonly text: string;
  /** True where a target's gate stands: the text then keeps clear of its bars. */
  readonly besideGate: boolean;
}

const NEAR_TOP = 0.85;

/** A point on the curve with its share beside it. */
export function CurvePoint({ geometry, mark, text, besideGate }: CurvePointProps) {
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
        <text y={above} text-anchor="middle">
          {text}
        </text>
      )}
    </g>
  );
}
