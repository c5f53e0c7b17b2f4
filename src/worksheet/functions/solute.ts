import { bibliography } from "../../foundation/bibliography";
import { IDEAL_KF_K_KG_PER_MOL } from "../../foundation/constants";
import type { Figure } from "../../foundation/figure";
import { outsideValidity } from "../../foundation/problem";
import type { Solute } from "../../catalogue/solute";
import { cardText } from "../card";
import { soluteCard } from "../cards";
import { choice, defineFunction, solute as soluteArgument } from "../define";

type Answer = (solute: Solute) => number | string | undefined;

const valueOf =
  (figure: (solute: Solute) => Figure | undefined): Answer =>
  (solute) =>
    figure(solute)?.value;

const PROPERTIES = {
  "molar mass": valueOf(({ molarMass }) => molarMass),
  "van 't Hoff": valueOf(({ vantHoff }) => vantHoff),
  /** What Kf·i becomes at great dilution, K per mole of the solute and kg of water. */
  "Kf equivalent": ({ vantHoff }) => vantHoff.value * IDEAL_KF_K_KG_PER_MOL,
  CAS: ({ cas }) => cas ?? undefined,
  formula: ({ formula }) => formula,
  kind: ({ kind }) => kind,
  food: ({ food }) => (food ? "yes" : "no"),
  eutectic: valueOf(({ eutecticTemperature }) => eutecticTemperature),
  "eutectic mass fraction": valueOf(({ eutecticMassFraction }) => eutecticMassFraction),
  "solubility 20": valueOf(({ solubility20 }) => solubility20),
  sweetness: valueOf(({ sweetness }) => sweetness),
  "Tm'": valueOf(({ maxFreezeTemperature }) => maxFreezeTemperature),
  "Cg'": valueOf(({ maxFreezeSolids }) => maxFreezeSolids),
  "dry glass transition": valueOf(({ glassTransitionDry }) => glassTransitionDry),
  "Gordon-Taylor k": valueOf(({ gordonTaylor }) => gordonTaylor),
  "checked to": ({ curveRecord }) => curveRecord.checkedToC,
  uncertainty: ({ curveRecord }) => curveRecord.relativeUncertainty,
  basis: ({ curveRecord }) => curveRecord.basis,
  source: ({ curveRecord }) => curveRecord.source.map((key) => bibliography[key]).join("; "),
  note: ({ note }) => note,
  card: (solute) => cardText(soluteCard(solute)),
} as const satisfies Record<string, Answer>;

const NAMES = Object.keys(PROPERTIES) as (keyof typeof PROPERTIES)[];

export const solute = defineFunction({
  name: "SOLUTE",
  summary: "A constant of a solute from the catalogue.",
  args: {
    name: soluteArgument("Name of the solute"),
    property: choice("What is asked", NAMES),
  },
  unit: "as the property",
  sources: ["ciaaw2021"],
  example: { formula: '=RIME.SOLUTE("sucrose","molar mass")', from: "computed here" },
  method:
    'Molar mass in g/mol, temperatures in °C, solubility 20 in g per 100 g of water at 20 °C, sweetness against sucrose = 1; uncertainty is the standard uncertainty of the freezing-point depression as a share of it, checked to the coldest printed temperature it was compared with. "card" is all of it in one cell: a card to open where the spreadsheet has cards (Excel with CustomFunctionsRuntime 1.4), one line elsewhere.',
  seeAlso: ["SOLUTES", "INGREDIENT"],
  card: ({ name, property }) => (property === "card" ? soluteCard(name) : null),
  compute: ({ name, property }) =>
    PROPERTIES[property](name) ??
    outsideValidity(
      `property: the catalogue has no "${property}" of "${name.name}"; a figure with a source is expected before it is shown.`,
    ),
});
