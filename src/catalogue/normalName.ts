/** The form in which names are compared: compatibility form, lower case, single spaces, one kind of dash. */
export function normalName(name: string): string {
  return name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/\s+/g, " ")
    .replace(/ %/g, "%")
    .trim();
}
