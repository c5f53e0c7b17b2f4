import type { curveGeometry } from "./curveGeometry";
import type { CurveTarget } from "./FreezingCurve";

interface TargetGateProps {
  readonly geometry: ReturnType<typeof curveGeometry>;
  readonly target: CurveTarget;
}

const HALF_WIDTH = 7;

/** A gate the curve has to pass: two bars at the target's temperature, at the least and the most ice. */
export function TargetGate({ geometry, target }: TargetGateProps) {
  const middle = geometry.x(target.temperatureC);
  const [bottom, top] = [geometry.y(target.iceFrom), geometry.y(target.iceTo)];
  const [left, right] = [middle - HALF_WIDTH, middle + HALF_WIDTH];
  return (
    <g class="curve-gate">
      <rect x={left} y={top} width={HALF_WIDTH * 2} height={Math.max(1, bottom - top)} />
      <path d={`M${left} ${top}H${right}M${left} ${bottom}H${right}`} />
    </g>
  );
}
