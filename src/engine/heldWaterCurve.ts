/**
 * How much water a solute holds back from freezing, one curve per solute (all forms of DEVELOPERS.md,
 * "The physics"). θ = −ln a_w / M_w, in mol per kg: the osmolality an ideal solution would need.
 */
export type HeldWaterCurve =
  /**
   * Hydration form of Stokes & Robinson (1966): n sites, one equilibrium constant. A chain of `units`
   * equal pieces (1 when left out) hydrates `units` times as much but counts as one particle.
   */
  | {
      readonly form: "hydration";
      readonly sites: number;
      readonly constantFreezing: number;
      readonly constant25C: number;
      readonly units?: number;
    }
  /** Norrish: ln a_w = ln x_w − K·x_s². */
  | { readonly form: "norrish"; readonly constant: number }
  /** Debye–Hückel with fitted corrections, linear in the coefficients (model form of DEVELOPERS.md). */
  | {
      readonly form: "series";
      readonly ions: number;
      readonly debyeHueckel: number;
      readonly a: readonly [number, number, number, number];
      readonly e: number;
      readonly e2: number;
      readonly k: readonly [number, number];
    };
