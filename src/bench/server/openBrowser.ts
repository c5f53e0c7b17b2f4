import { spawn } from "node:child_process";

const OPENERS: Partial<Record<NodeJS.Platform, readonly [string, ...string[]]>> = {
  darwin: ["open"],
  win32: ["cmd", "/c", "start", ""],
};

/** Opens the user's own browser. Where there is none to open, the printed address has to do. */
export function openBrowser(url: string): void {
  const [command, ...args] = OPENERS[process.platform] ?? ["xdg-open"];
  const opener = spawn(command, [...args, url], { stdio: "ignore", detached: true });
  opener.once("error", () => undefined);
  opener.unref();
}
