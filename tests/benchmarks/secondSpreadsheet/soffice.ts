import { execFileSync, spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

/** The other spreadsheet's command, by SOFFICE or as installed; null when it is not there. */
export function findSoffice(): string | null {
  const wanted = process.env["SOFFICE"] ?? "soffice";
  return spawnSync(wanted, ["--version"], { stdio: "ignore" }).status === 0 ? wanted : null;
}

export const versionOf = (soffice: string): string =>
  execFileSync(soffice, ["--version"], { encoding: "utf8" })
    .trim()
    .split(" ")
    .slice(0, 2)
    .join(" ");

const LOAD = "/org.openoffice.Office.Calc/Formula/Load";

/** A profile of its own, that says whether files are calculated anew when they are opened (0) or not (1). */
function profile(folder: string, recalculates: boolean): string {
  const home = path.join(folder, recalculates ? "profile-fresh" : "profile-kept");
  const items = ["OOXMLRecalcMode", "ODFRecalcMode"].map(
    (name) =>
      `<item oor:path="${LOAD}"><prop oor:name="${name}" oor:op="fuse"><value>${recalculates ? 0 : 1}</value></prop></item>`,
  );
  mkdirSync(path.join(home, "user"), { recursive: true });
  writeFileSync(
    path.join(home, "user", "registrymodifications.xcu"),
    `<oor:items xmlns:oor="http://openoffice.org/2001/registry">${items.join("")}</oor:items>`,
  );
  return pathToFileURL(home).href;
}

export interface Conversion {
  readonly soffice: string;
  /** Where profiles and answers go. */
  readonly folder: string;
  /** The kind of file, with the filter's options where it takes any. */
  readonly to: string;
  readonly recalculates: boolean;
}

/** Lets the other spreadsheet open all files of a folder and save them as another kind; gives where. */
export function converted(files: string, target: string, conversion: Conversion): string {
  const { soffice, folder, to, recalculates } = conversion;
  const output = path.join(folder, target);
  const paths = readdirSync(files).map((name) => path.join(files, name));
  const user = `-env:UserInstallation=${profile(folder, recalculates)}`;
  const command = [user, "--headless", "--convert-to", to, "--outdir", output, ...paths];
  execFileSync(soffice, command, { stdio: "ignore" });
  return output;
}
