/** Where a recipe is looked at before anything is chosen. Common practice, no source. */
export const USUAL_SERVING_C = -14;

/** A household freezer's nominal temperature, IEC 62552-1 (four stars). */
export const HOUSEHOLD_FREEZER_C = -18;
