import { ICE_DECADES, WITH_ICE, WITHOUT_ICE, type TextureStep } from "../catalogue/textureScale";
import { isProblem } from "../foundation/problem";
import type { Mix } from "./mix";
import { textureOf, type UnfrozenPhase } from "./texture";
import { line, shown, type WorkingLine } from "./workingLine";

/** "pours below 1.5, spoons below 2.9, …, rock-hard above": a scale as one would read it out. */
const readOut = (scale: readonly TextureStep[]): string =>
  scale
    .map(({ below, word }) => (below < Infinity ? `${word} below ${below}` : `${word} above`))
    .join(", ");

function viscosityLines(temperatureC: number, unfrozen: UnfrozenPhase): WorkingLine[] {
  const { transitionC, decade } = unfrozen;
  const distance = shown(temperatureC - transitionC);
  return [
    line(
      "glass transition of what is not frozen",
      "Gordon–Taylor",
      shown(transitionC),
      transitionC,
      "°C",
      "gordonTaylor1952",
    ),
    line(
      "its viscosity, a decade either way",
      "log10 η = 12 − 17.44 d / (51.6 + d), d = T − Tg; at Tg and below a glass: 12",
      decade === 12 ? "12" : `12 - 17.44 × ${distance} / (51.6 + ${distance})`,
      decade,
      "log10 of Pa·s",
      "wlf1955",
    ),
  ];
}

/** The lines of the working that say why the texture is called what it is. */
export function textureLines(mix: Mix, temperatureC: number): readonly WorkingLine[] {
  const texture = textureOf(mix, temperatureC);
  if (isProblem(texture)) {
    return [line("texture", "not said", "", texture.message, "", "commonPractice")];
  }
  const { word, iceOfMix, unfrozen, firmness } = texture;
  const last = (formula: string): WorkingLine =>
    line("texture", formula, "", word, "", "commonPractice");
  if (unfrozen === null) return [last("nothing is dissolved: ice below 0 °C, else water")];
  const viscosity = viscosityLines(temperatureC, unfrozen);
  if (firmness === null) return [...viscosity, last(`by that decade: ${readOut(WITHOUT_ICE)}`)];
  return [
    ...viscosity,
    line(
      "firmness",
      `that decade + ${ICE_DECADES} × share of ice in the mix`,
      `${shown(unfrozen.decade)} + ${ICE_DECADES} × ${shown(iceOfMix)}`,
      firmness,
      "1",
      "commonPractice",
    ),
    last(`by firmness: ${readOut(WITH_ICE)}`),
  ];
}
