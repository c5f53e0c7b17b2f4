import { BUILD_DIRECTORY, buildIfNeeded } from "../../src/bench/server/buildIfNeeded";
import { serve, type Serving } from "../../src/bench/server/serve";

/** Builds what is missing and serves the bench for a browser test; call `close` when done. */
export async function startBenchServer(): Promise<Serving> {
  await buildIfNeeded();
  return serve(BUILD_DIRECTORY, 3100 + Math.floor(Math.random() * 800));
}
