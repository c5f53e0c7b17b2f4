import type { Aim } from "../aims/aim";
import { FreezingCurve } from "../charts/FreezingCurve";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import { askMix, firstNumber, type RecipeMix } from "../bowl/askMix";
import { bandOfMix } from "../bowl/bandOfMix";
import { CURVE_TO_C, curvePoints, type CurvePoint } from "./curvePoints";
import { PictureFrame } from "./PictureFrame";

export interface PictureProps {
  readonly context: PaneContext;
  readonly mix: RecipeMix;
  readonly servingC: number;
  readonly storageC: number;
}

interface FreezingPictureProps extends PictureProps {
  readonly target: Aim | null;
  readonly other: RecipeMix | null;
}

const EVERY = 4; // rows of the table are 2 °C apart

/** The freezing curve with its band, the target's gate, and a second recipe beside it. */
export function FreezingPicture(props: FreezingPictureProps) {
  const { context, mix, servingC, storageC, target, other } = props;
  const { words, numbers } = context;
  const points = curvePoints(mix);
  if (points.length === 0) return <Notice tone="note">{words.curves.declined}</Notice>;
  const basis = target?.basis ?? "water";
  const share = (point: CurvePoint) => (basis === "water" ? point.iceOfWater : point.iceOfMix);
  const dots = (of: readonly CurvePoint[]) =>
    of.map((point) => ({
      temperatureC: point.temperatureC,
      fraction: share(point),
      band: basis === "water" ? point.band : null,
    }));
  const otherPoints = other === null ? [] : curvePoints(other);
  const marks = [...new Set([servingC, storageC])].flatMap((temperatureC) => {
    const fraction = firstNumber(askMix(mix, "ICEFRACTION", temperatureC, basis));
    const isDrawn = temperatureC <= 0 && temperatureC >= CURVE_TO_C;
    return fraction === null || !isDrawn
      ? []
      : [{ label: String(temperatureC), temperatureC, fraction }];
  });
  const withBand = (point: CurvePoint) =>
    numbers.share(share(point), basis === "mix" ? bandOfMix(point, point.band) : point.band);
  return (
    <PictureFrame
      context={context}
      title={`${mix.title}: ${words.chart.title[basis]}`}
      table={{
        head: [
          words.curves.temperature,
          mix.title,
          ...(otherPoints.length === 0 ? [] : [other?.title ?? ""]),
        ],
        rows: points.flatMap((point, at) => {
          const beside = otherPoints[at];
          return at % EVERY === 0
            ? [
                [
                  numbers.plain(point.temperatureC),
                  withBand(point),
                  ...(beside === undefined ? [] : [withBand(beside)]),
                ],
              ]
            : [];
        }),
      }}
    >
      <FreezingCurve
        words={words}
        numbers={numbers}
        dots={dots(points)}
        coldestC={CURVE_TO_C}
        marks={marks}
        target={target}
        basis={basis}
        {...(other !== null &&
          otherPoints.length > 0 && { other: { name: other.title, dots: dots(otherPoints) } })}
      />
      <p class="quiet">{words.curves.bandNote}</p>
    </PictureFrame>
  );
}
