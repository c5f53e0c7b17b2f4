/** What `load` takes: "name,items/values", a list of such paths, or nested objects of true. */
export type LoadSpec = string | readonly string[] | { readonly [property: string]: unknown };

function pathsOfObject(spec: { readonly [property: string]: unknown }): string[] {
  return Object.entries(spec).flatMap(([name, wanted]) => {
    if (name.startsWith("$")) return name === "$all" && wanted === true ? [""] : [];
    if (typeof wanted === "object" && wanted !== null) {
      return pathsOfObject(wanted as { readonly [property: string]: unknown }).map((path) =>
        path === "" ? name : `${name}/${path}`,
      );
    }
    return wanted === true ? [name] : [];
  });
}

/** The property paths a load asks for; "" means every plain property. */
export function loadPaths(spec: LoadSpec | undefined): readonly string[] {
  if (spec === undefined) return [""];
  if (typeof spec === "string") return spec.split(",").map((path) => path.trim());
  if (Array.isArray(spec)) return spec.flatMap((path: string) => loadPaths(path));
  return pathsOfObject(spec as { readonly [property: string]: unknown });
}
