import { useState } from "preact/hooks";
import { MoverBars } from "../charts/MoverBars";
import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import type { PictureProps } from "./FreezingPicture";
import { moversOf, type MovedQuantity } from "./movers";
import { PictureFrame } from "./PictureFrame";

const QUANTITIES: readonly MovedQuantity[] = ["freezing point", "ice of water"];
const MOST = 12;

/** Which ingredient moves the answer most when it is weighed a tenth less or more. */
export function MoversPicture({ context, mix, servingC }: PictureProps) {
  const { words, numbers } = context;
  const texts = words.curves;
  const [quantity, setQuantity] = useState<MovedQuantity>("ice of water");
  const found = moversOf(mix, quantity, servingC);
  const text = (value: number) =>
    quantity === "freezing point" ? `${numbers.fixed(value, 2)} °C` : numbers.percent(value, 1);
  const signed = (value: number, now: number) =>
    `${value >= now ? "+" : ""}${quantity === "freezing point" ? numbers.fixed(value - now, 2) : numbers.fixed((value - now) * 100, 1)}`;
  const name =
    quantity === "freezing point"
      ? texts.quantities[quantity]
      : `${texts.quantities[quantity]}, ${numbers.plain(servingC)} °C`;
  return (
    <>
      <Choice
        label={texts.quantity}
        value={quantity}
        options={QUANTITIES.map((key) => ({ value: key, label: texts.quantities[key] }))}
        onChange={setQuantity}
      />
      {found === null || found.movers.length === 0 ? (
        <Notice tone="note">{texts.declined}</Notice>
      ) : (
        <PictureFrame
          context={context}
          title={`${mix.title}: ${texts.moversTitle(name)}`}
          table={{
            head: [texts.ingredient, texts.less, texts.more],
            rows: found.movers.map(({ name: item, less, more }) => [item, text(less), text(more)]),
          }}
        >
          <MoverBars
            title={`${texts.moversTitle(name)} ${text(found.now)}`}
            now={found.now}
            nowText={text(found.now)}
            bars={found.movers.slice(0, MOST).map((mover) => ({
              ...mover,
              text: `${signed(mover.less, found.now)} | ${signed(mover.more, found.now)}`,
            }))}
          />
        </PictureFrame>
      )}
    </>
  );
}
