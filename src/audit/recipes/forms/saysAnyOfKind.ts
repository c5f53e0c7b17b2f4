const KIND = /\b(salt|sugar|salz(es)?|zuckers?)\b/i;

/** Whether a label may mean any salt or sugar: "Mass of salt" below "Substance: potassium chloride" is the mass of that. */
export const saysAnyOfKind = (label: string): boolean => KIND.test(label) && !/chlor/i.test(label);
