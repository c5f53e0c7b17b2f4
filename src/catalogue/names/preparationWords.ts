const listed = (words: string): readonly string[] => words.trim().split(/\s+/);

/**
 * What is said of an ingredient's state and preparation and changes neither its water nor what is dissolved in it
 * beyond the spread of the ingredient itself; common practice, no source. Words that change it, like "dried",
 * "candied", "sweetened", "soaked" or "cooked", must not stand here.
 */
export const preparationWords: readonly string[] = [
  // how fresh, how warm
  ...listed(`
    fresh freshly ripe overripe very cold chilled warm warmed lukewarm hot boiling cooled room
    temperature temp frozen thawed defrosted frisch reif sehr kalt gekühlt eiskalt warm
    lauwarm heiss kochend zimmerwarm abgekühlt tk tiefgekühlt tiefgefroren gefroren aufgetaut
    raumtemperatur zimmertemperatur
  `),
  // what was taken off
  ...listed(`
    peeled skinned cored hulled pitted stoned deseeded seedless trimmed cleaned washed drained
    shelled blanched strained sieved sifted filtered geschält enthäutet entkernt entsteint
    kernlos geputzt gewaschen abgetropft passiert gesiebt gefiltert abgeseiht blanchiert
  `),
  // how fine
  ...listed(`
    halved halves chopped diced sliced cubed crushed crumbled broken grated mashed pureed
    finely coarsely roughly fine coarse smooth crunchy whole cut up bruised zerdrückt halbiert
    gehackt gewürfelt gerieben geraspelt püriert zerstossen zerbröselt zerkleinert fein grob
    feinst ganz stichfest gemixt
  `),
  // what was done to it
  ...listed(`
    squeezed pressed beaten whisked stiff stirred lightly softened melted gepresst ausgepresst
    geschlagen steif verquirlt weich zerlassen geschmolzen uht pasteurised homogenised
    unwhipped refined deodorised virgin pasteurisiert homogenisiert haltbar ungeschlagen
    raffiniert desodoriert nativ
  `),
  // of what kind and how much of it
  ...listed(`
    organic bio natural real good best quality large medium small size pinch optional food
    grade taste about approx heaped level 100% lab naturrein natur echt direktsaft regional
    gross mittelgross klein grösse gr prise optional geschmack nach ca etwas gestrichen
    gehäuft pa usp mind mindestens
  `),
];

/** The same for fruit alone: what it is cut or made into. */
export const fruitWords = listed(`
  puree pulp flesh fruit unpeeled quartered stemmed iqf blended pieces chunks cubes slices
  segments püree pulpe mark fruchtmark fruchtpüree fruchtfleisch frucht geviertelt entstielt
  verlesen ungeschält stücke stückchen würfel scheiben spalten
`);

/** The same for foods other than water: "pure water" and "pure alcohol" are parts of a mix. */
export const pureWords = listed(`
  pure rein
`);

/** The same for biscuits alone. */
export const biscuitWords = listed(`
  crumbs pieces mini homemade brösel krümel stücke hausgemacht
`);

/** The same for what is sold with sugar only where its name says so. */
export const unsweetenedWords = listed(`
  unsweetened ungesüsst ungezuckert
`);

/** Of what can go in whole or melted or blended: that it is in pieces. */
export const pieceWords = listed(`
  chopped crushed crumbled broken diced whole pieces chunks bits chips drops shavings gehackt
  gewürfelt zerstossen zerbröselt ganz stücke stückchen tropfen splitter raspel würfel
`);

/** The same: that it is melted or blended. */
export const meltedWords = listed(`
  melted pureed blended geschmolzen zerlassen püriert püree puree
`);

/** The same for nuts and seeds alone: roasted fruit has lost water, ground coffee is no coffee. */
export const nutWords = listed(`
  toasted roasted ground milled flaked slivered kernels unsalted raw nibbed skinless flakes
  slivers pieces geröstet gemahlen gem gehobelt gestiftelt kerne ungesalzen roh hälften
  blättchen stifte splitter scheiben stücke stückchen
`);

/** All words that only some names can do without; `goesWithoutSaying` tells which can. */
export const wordsOfSome: readonly string[] = [
  ...[...pureWords, ...biscuitWords, ...nutWords],
  ...[...fruitWords, ...unsweetenedWords, ...pieceWords],
];
