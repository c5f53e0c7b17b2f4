/** The words of TEXTURE in German. */
export const textureWords = {
  pours: "gießbar",
  spoons: "löffelweich",
  scoops: "portionierbar",
  bites: "bissfest",
  "rock-hard": "steinhart",
  flows: "fließt",
  squeezes: "lässt sich drücken",
  pulls: "zieht sich zäh",
  cuts: "schnittfest",
  snaps: "bricht",
} as const;
