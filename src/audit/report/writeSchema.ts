import { writeFileSync } from "node:fs";
import path from "node:path";
import * as z from "zod";
import { reportSchema } from "./reportSchema";

// npx tsx src/audit/report/writeSchema.ts: writes the report's published schema anew.

const file = path.join(__dirname, "report.schema.json");
writeFileSync(file, `${JSON.stringify(z.toJSONSchema(reportSchema), null, 2)}\n`);
