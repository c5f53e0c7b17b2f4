export { argumentsOf, callFormula, nameOf } from "../../src/help/callFormula";
