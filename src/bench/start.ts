import { BUILD_DIRECTORY, buildIfNeeded } from "./server/buildIfNeeded";
import { openBrowser } from "./server/openBrowser";
import { serve } from "./server/serve";

/** `npm start`: the spreadsheet with the functions and the pane, in the browser, on this machine only. */
async function start(): Promise<void> {
  console.error("Looking for what has to be built …");
  await buildIfNeeded();
  const { url } = await serve(BUILD_DIRECTORY);
  console.log(`Rimeline is running at ${url} (to this machine only). Ctrl+C ends it.`);
  if (!process.env["CI"]) openBrowser(url);
}

start().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
