import { bibliography } from "../foundation/bibliography";
import { isProblem } from "../foundation/problem";
import type { Mix } from "./mix";
import { textureOf } from "./texture";
import { shown, type WorkingLine } from "./workingLine";

const practice = bibliography.commonPractice;

/** The lines of the working that say why the texture is called what it is. */
export function textureLines(mix: Mix, temperatureC: number): readonly WorkingLine[] {
  const texture = textureOf(mix, temperatureC);
  if (isProblem(texture)) return [];
  const { word, glass } = texture;
  if (glass === null) {
    const formula =
      "by the share of the mix that is ice: 0.15 pours, 0.40 spoons, 0.60 scoops, 0.82 bites, above rock-hard";
    return [{ step: "texture", formula, numbers: "", result: word, unit: "", source: practice }];
  }
  const distance = temperatureC - glass.transitionC;
  return [
    {
      step: "glass transition of the unfrozen mix",
      formula: "Gordon–Taylor",
      numbers: shown(glass.transitionC),
      result: glass.transitionC,
      unit: "°C",
      source: bibliography.gordonTaylor1952,
    },
    {
      step: "viscosity, a decade either way",
      formula: "log10 η = 12 − 17.44 d / (51.6 + d), d = T − Tg",
      numbers:
        distance <= 0 ? "12" : `12 - 17.44 × ${shown(distance)} / (51.6 + ${shown(distance)})`,
      result: glass.logViscosity,
      unit: "log10 of Pa·s",
      source: practice,
    },
    {
      step: "texture",
      formula: "by that decade: 1 flows, 3 squeezes, 6 pulls, 12 cuts, above snaps",
      numbers: "",
      result: word,
      unit: "",
      source: practice,
    },
  ];
}
