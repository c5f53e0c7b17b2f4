/** The two functions of psychrolib that the ice line is compared with. */
declare module "psychrolib" {
  export const SI: number;
  export function SetUnitSystem(system: number): void;
  /** Saturation vapour pressure, Pa: over ice below 0.01 °C, over water above. */
  export function GetSatVapPres(temperatureC: number): number;
}
