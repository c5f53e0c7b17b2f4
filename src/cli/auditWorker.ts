import { parentPort, workerData } from "node:worker_threads";
import { auditFile, type AuditTask } from "./auditFile";

// The audit's own thread: what it may take of memory and time is limited by whoever starts it.

void auditFile(workerData as AuditTask).then((answer) => parentPort?.postMessage(answer));
