import type { Problem } from "../../foundation/problem";
import type { Archive } from "./archive";
import { readXml } from "./readXml";

/** Where a part of the file points: to another part, or outside. */
export interface Relationship {
  readonly id: string;
  /** Last word of its type: "worksheet", "sharedStrings", "table", "externalLinkPath"… */
  readonly type: string;
  /** Full name of a part; or, for an external one, the target as written. */
  readonly target: string;
  readonly external: boolean;
}

/** Resolves "../tables/table1.xml" against "xl/worksheets/sheet1.xml". */
function resolved(target: string, from: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const path = from.split("/").slice(0, -1);
  for (const step of target.replaceAll("\\", "/").split("/")) {
    if (step === "..") path.pop();
    else if (step !== "." && step !== "") path.push(step);
  }
  return path.join("/");
}

/** The relationships of a part (its .rels file); none when it has no such file. */
export function readRelationships(
  archive: Archive,
  partName: string,
): { readonly list: readonly Relationship[]; readonly problem: Problem | null } {
  const slash = partName.lastIndexOf("/") + 1;
  const relsName = `${partName.slice(0, slash)}_rels/${partName.slice(slash)}.rels`;
  const list: Relationship[] = [];
  if (!archive.entries.has(relsName.toLowerCase())) return { list, problem: null };
  const problem = readXml(archive, relsName, {
    open: (name, { Id, Type = "", Target = "", TargetMode }) => {
      if (name !== "Relationship" || Id === undefined) return null;
      const external = TargetMode === "External";
      list.push({
        id: Id,
        type: Type.slice(Type.lastIndexOf("/") + 1),
        target: external ? Target : resolved(Target, partName),
        external,
      });
      return null;
    },
  });
  return { list, problem };
}
