import path from "node:path";
import { Worker } from "node:worker_threads";
import { badInput } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { threadScript } from "./threadScript";

/** Without a limit the collector would wait until far more is garbage than is in use. */
const MOST_MEGABYTES = 380;
const MOST_SECONDS = 120;

export interface WorkerLimits {
  readonly megabytes?: number;
  readonly seconds?: number;
}

/**
 * Runs a file of this folder in a thread of its own, which is ended when it takes more memory or time than is
 * allowed. Answers with the thread's first message, or with a Problem in one sentence.
 */
export function inWorker<T>(
  entry: string,
  task: unknown,
  { megabytes = MOST_MEGABYTES, seconds = MOST_SECONDS }: WorkerLimits = {},
): Promise<Result<T>> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(threadScript(path.join(__dirname, entry)), {
      eval: true,
      execArgv: [],
      workerData: task,
      resourceLimits: { maxOldGenerationSizeMb: megabytes },
    });
    const finish = (settle: () => void): void => {
      clearTimeout(timer);
      settle();
      void worker.terminate();
    };
    const timer = setTimeout(() => {
      finish(() =>
        resolve(badInput(`The workbook takes more than ${seconds} seconds and was given up.`)),
      );
    }, seconds * 1000);
    worker.once("message", (answer: Result<T>) => finish(() => resolve(answer)));
    worker.once("error", (mishap: NodeJS.ErrnoException) =>
      finish(() => {
        if (mishap.code === "ERR_WORKER_OUT_OF_MEMORY") {
          resolve(badInput(`The workbook needs more than ${megabytes} MB of memory to be read.`));
        } else reject(mishap);
      }),
    );
  });
}
