const UNIT_BEHIND = /\s*[([][^()[\]]*[)\]]$|,\s*\p{L}{1,2}$/u;

/** A heading without the unit behind it: "Milk ice (g)", "Menge, g". */
export const withoutUnitBehind = (heading: string): string => heading.replace(UNIT_BEHIND, "");
