import type { Solute } from "./solute";
import { aceticAcid } from "./solutes/aceticAcid";
import { acetone } from "./solutes/acetone";
import { allulose } from "./solutes/allulose";
import { ammonia } from "./solutes/ammonia";
import { ammoniumChloride } from "./solutes/ammoniumChloride";
import { calciumChloride } from "./solutes/calciumChloride";
import { calciumChlorideDihydrate } from "./solutes/calciumChlorideDihydrate";
import { citricAcid } from "./solutes/citricAcid";
import { citricAcidMonohydrate } from "./solutes/citricAcidMonohydrate";
import { erythritol } from "./solutes/erythritol";
import { ethanol } from "./solutes/ethanol";
import { ethyleneGlycol } from "./solutes/ethyleneGlycol";
import { fructose } from "./solutes/fructose";
import { fruitAcids } from "./solutes/fruitAcids";
import { galactose } from "./solutes/galactose";
import { glucose } from "./solutes/glucose";
import { glucoseMonohydrate } from "./solutes/glucoseMonohydrate";
import { glycerol } from "./solutes/glycerol";
import { hydrogenChloride } from "./solutes/hydrogenChloride";
import { isomalt } from "./solutes/isomalt";
import { lacticAcid } from "./solutes/lacticAcid";
import { lactitol } from "./solutes/lactitol";
import { lactitolMonohydrate } from "./solutes/lactitolMonohydrate";
import { lactose } from "./solutes/lactose";
import { lactoseMonohydrate } from "./solutes/lactoseMonohydrate";
import { lithiumChloride } from "./solutes/lithiumChloride";
import { magnesiumChloride } from "./solutes/magnesiumChloride";
import { magnesiumChlorideHexahydrate } from "./solutes/magnesiumChlorideHexahydrate";
import { magnesiumSulfate } from "./solutes/magnesiumSulfate";
import { malicAcid } from "./solutes/malicAcid";
import { maltitol } from "./solutes/maltitol";
import { maltose } from "./solutes/maltose";
import { maltoseMonohydrate } from "./solutes/maltoseMonohydrate";
import { maltotriose } from "./solutes/maltotriose";
import { mannitol } from "./solutes/mannitol";
import { methanol } from "./solutes/methanol";
import { milkSalts } from "./solutes/milkSalts";
import { potassiumAcetate } from "./solutes/potassiumAcetate";
import { potassiumBicarbonate } from "./solutes/potassiumBicarbonate";
import { potassiumCarbonate } from "./solutes/potassiumCarbonate";
import { potassiumChloride } from "./solutes/potassiumChloride";
import { potassiumDihydrogenPhosphate } from "./solutes/potassiumDihydrogenPhosphate";
import { potassiumHydrogenPhosphate } from "./solutes/potassiumHydrogenPhosphate";
import { potassiumNitrate } from "./solutes/potassiumNitrate";
import { potassiumSulfate } from "./solutes/potassiumSulfate";
import { propyleneGlycol } from "./solutes/propyleneGlycol";
import { sodiumAcetate } from "./solutes/sodiumAcetate";
import { sodiumBicarbonate } from "./solutes/sodiumBicarbonate";
import { sodiumCarbonate } from "./solutes/sodiumCarbonate";
import { sodiumCarbonateDecahydrate } from "./solutes/sodiumCarbonateDecahydrate";
import { sodiumChloride } from "./solutes/sodiumChloride";
import { sodiumDihydrogenPhosphate } from "./solutes/sodiumDihydrogenPhosphate";
import { sodiumHydroxide } from "./solutes/sodiumHydroxide";
import { sodiumNitrate } from "./solutes/sodiumNitrate";
import { sodiumSulfate } from "./solutes/sodiumSulfate";
import { sorbitol } from "./solutes/sorbitol";
import { sucrose } from "./solutes/sucrose";
import { tartaricAcid } from "./solutes/tartaricAcid";
import { trehalose } from "./solutes/trehalose";
import { trehaloseDihydrate } from "./solutes/trehaloseDihydrate";
import { trisodiumCitrate } from "./solutes/trisodiumCitrate";
import { trisodiumCitrateDihydrate } from "./solutes/trisodiumCitrateDihydrate";
import { twoPropanol } from "./solutes/twoPropanol";
import { urea } from "./solutes/urea";
import { xylitol } from "./solutes/xylitol";

/** Every solute of the catalogue, one file each; the order is that of the lists shown. */
export const solutes: readonly Solute[] = [
  sucrose,
  glucose,
  glucoseMonohydrate,
  fructose,
  galactose,
  allulose,
  lactose,
  lactoseMonohydrate,
  maltose,
  maltoseMonohydrate,
  trehalose,
  trehaloseDihydrate,
  maltotriose,
  sorbitol,
  mannitol,
  xylitol,
  erythritol,
  maltitol,
  isomalt,
  lactitol,
  lactitolMonohydrate,
  glycerol,
  propyleneGlycol,
  ethyleneGlycol,
  ethanol,
  methanol,
  twoPropanol,
  acetone,
  sodiumChloride,
  potassiumChloride,
  calciumChloride,
  calciumChlorideDihydrate,
  magnesiumChloride,
  magnesiumChlorideHexahydrate,
  citricAcid,
  citricAcidMonohydrate,
  malicAcid,
  tartaricAcid,
  lacticAcid,
  aceticAcid,
  trisodiumCitrate,
  trisodiumCitrateDihydrate,
  sodiumBicarbonate,
  sodiumCarbonate,
  sodiumCarbonateDecahydrate,
  sodiumAcetate,
  potassiumAcetate,
  sodiumSulfate,
  sodiumNitrate,
  sodiumDihydrogenPhosphate,
  potassiumDihydrogenPhosphate,
  potassiumHydrogenPhosphate,
  potassiumBicarbonate,
  potassiumCarbonate,
  potassiumSulfate,
  potassiumNitrate,
  magnesiumSulfate,
  ammoniumChloride,
  lithiumChloride,
  hydrogenChloride,
  sodiumHydroxide,
  urea,
  ammonia,
  fruitAcids,
  milkSalts,
];
