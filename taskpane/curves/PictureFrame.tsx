import type { ComponentChildren } from "preact";
import { useRef, useState } from "preact/hooks";
import { AmountTable } from "../components/AmountTable";
import { Notice } from "../components/Notice";
import { saveFile } from "../components/saveFile";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import { pngBase64, svgText } from "./pictureFile";

interface PictureFrameProps {
  readonly context: PaneContext;
  /** Names the files too. */
  readonly title: string;
  readonly table: {
    readonly head: readonly string[];
    readonly rows: readonly (readonly string[])[];
  };
  readonly children: ComponentChildren;
}

const bytesOf = (base64: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));

/** A picture with its table behind it and its ways out: two kinds of file, and the sheet. */
export function PictureFrame({ context, title, table, children }: PictureFrameProps) {
  const { words, host, announce } = context;
  const frame = useRef<HTMLElement>(null);
  const { fault, run } = useHostTask(context);
  const [told, setTold] = useState<string | null>(null);
  const fileName = title.replace(/[^\p{L}\p{N}−-]+/gu, " ").trim();
  const tell = (sentence: string) => {
    setTold(sentence);
    announce(sentence);
  };
  const withSvg = (use: (svg: SVGSVGElement) => Promise<string>) => () =>
    void run(async () => {
      const svg = frame.current?.querySelector("svg");
      if (svg !== null && svg !== undefined) tell(await use(svg));
    });
  const saveSvg = withSvg((svg) => {
    saveFile(`${fileName}.svg`, new Blob([svgText(svg)], { type: "image/svg+xml" }));
    return Promise.resolve(words.curves.saved(`${fileName}.svg`));
  });
  const savePng = withSvg(async (svg) => {
    saveFile(`${fileName}.png`, new Blob([bytesOf(await pngBase64(svg))], { type: "image/png" }));
    return words.curves.saved(`${fileName}.png`);
  });
  const insert = withSvg(async (svg) => {
    const isPlaced = await host?.insertPicture(await pngBase64(svg), fileName);
    return isPlaced === true ? words.curves.placed : words.curves.noPictures;
  });
  return (
    <figure class="picture" ref={frame}>
      <figcaption>{title}</figcaption>
      {children}
      <details>
        <summary>{words.curves.asTable}</summary>
        <AmountTable {...table} />
      </details>
      <div class="buttons">
        <button type="button" class="small" onClick={saveSvg}>
          {words.curves.saveSvg}
        </button>
        <button type="button" class="small" onClick={savePng}>
          {words.curves.savePng}
        </button>
        <button type="button" class="small" onClick={insert}>
          {words.curves.insert}
        </button>
      </div>
      {fault !== null && <Notice tone="trouble">{fault}</Notice>}
      {told !== null && fault === null && <p class="quiet">{told}</p>}
    </figure>
  );
}
