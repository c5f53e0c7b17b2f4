import { ShareBars, type ShareBar } from "../charts/ShareBars";
import { Notice } from "../components/Notice";
import type { PictureProps } from "./FreezingPicture";
import { heldWater } from "./heldWater";
import { PictureFrame } from "./PictureFrame";

/** Which ingredient keeps how much of the water liquid at the serving temperature. */
export function HeldPicture({ context, mix, servingC }: PictureProps) {
  const { words, numbers } = context;
  const texts = words.curves;
  const held = heldWater(mix, servingC);
  if (held === null || held.waterGrams <= 0) return <Notice tone="note">{texts.declined}</Notice>;
  const { shares, waterGrams, iceGrams } = held;
  const rows = [
    ...shares.map(({ name, heldGrams }) => ({ name, grams: heldGrams, kind: "held" as const })),
    { name: texts.ice, grams: iceGrams, kind: "ice" as const },
  ];
  const bars: ShareBar[] = rows.map(({ name, grams, kind }) => ({
    name,
    kind,
    fraction: grams / waterGrams,
    text: numbers.percent(grams / waterGrams, 1),
  }));
  const title = texts.heldTitle(numbers.plain(servingC));
  return (
    <PictureFrame
      context={context}
      title={`${mix.title}: ${title}`}
      table={{
        head: [texts.ingredient, texts.water, texts.shareOfWater],
        rows: rows.map(({ name, grams }) => [
          name,
          numbers.fixed(grams, 1),
          numbers.percent(grams / waterGrams, 1),
        ]),
      }}
    >
      <ShareBars
        title={`${title} ${bars.map(({ name, text }) => `${name}: ${text}`).join(", ")}.`}
        bars={bars}
      />
      <p class="quiet">{texts.heldNote}</p>
    </PictureFrame>
  );
}
