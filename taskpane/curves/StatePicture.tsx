import { StateDiagram } from "../charts/StateDiagram";
import { Notice } from "../components/Notice";
import { askMix, firstNumber } from "../bowl/askMix";
import type { PictureProps } from "./FreezingPicture";
import { PictureFrame } from "./PictureFrame";
import { stateLines, type StatePoint } from "./stateLines";

const EVERY = 5;

/** The state diagram: where ice forms, where the rest turns to glass, and where the mix stands. */
export function StatePicture({ context, mix, servingC, storageC }: PictureProps) {
  const { words, numbers } = context;
  const texts = words.curves;
  const lines = stateLines(mix);
  if (lines === null) return <Notice tone="note">{texts.declined}</Notice>;
  const at = (label: string, temperatureC: number) => {
    const solidsFraction = firstNumber(askMix(mix, "UNFROZENSOLIDS", temperatureC));
    return solidsFraction === null
      ? []
      : [{ label, side: "left" as const, solidsFraction, temperatureC }];
  };
  const kept = [
    ...at(texts.served(numbers.plain(servingC)), servingC),
    ...(storageC === servingC ? [] : at(texts.stored(numbers.plain(storageC)), storageC)),
  ];
  const marks = [
    ...kept.sort((one, other) => other.temperatureC - one.temperatureC),
    {
      label: texts.weighed,
      side: "right" as const,
      solidsFraction: lines.mixSolidsFraction,
      temperatureC: 5,
    },
    ...(lines.end === null
      ? []
      : [{ label: texts.endOfFreezing, side: "left" as const, ...lines.end }]),
  ];
  const row = (name: string, { solidsFraction, temperatureC }: StatePoint) => [
    name,
    numbers.percent(solidsFraction, 1),
    numbers.fixed(temperatureC, 1),
  ];
  return (
    <PictureFrame
      context={context}
      title={`${mix.title}: ${texts.pictures.state}`}
      table={{
        head: [texts.line, texts.dissolvedShare, texts.temperature],
        rows: [
          ...marks
            .filter(({ label }) => label !== texts.weighed)
            .map(({ label, ...point }) => row(label, point)),
          ...lines.freezing
            .filter((_point, index) => index % EVERY === 0)
            .map((point) => row(texts.freezingLine, point)),
          ...lines.glass.map((point) => row(texts.glassLine, point)),
        ],
      }}
    >
      <StateDiagram
        numbers={numbers}
        title={texts.stateTitle}
        xLabel={texts.dissolvedShare}
        yLabel={texts.temperature}
        freezing={lines.freezing}
        freezingLabel={texts.freezingLine}
        glass={lines.glass}
        glassLabel={texts.glassLine}
        marks={marks}
      />
      <p class="quiet">{texts.stateNote}</p>
    </PictureFrame>
  );
}
