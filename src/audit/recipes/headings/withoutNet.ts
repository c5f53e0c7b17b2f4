/** "Solute, net (g)": what is left of the scale's reading without the vessel is of the solute. */
const NET = /,? \(?net(to)?\b\)?/i;

/** A heading without the word that says that the vessel is not counted. */
export const withoutNet = (header: string): string => header.replace(NET, "");
