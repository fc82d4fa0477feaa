import { z } from "zod";
import { drillSchema } from "./drill-schema.ts";

/** The published form of the drill schema (`drill.schema.json` beside this file is this, written out). */
export function drillJsonSchema(): object {
  return { title: "Overcue drill", ...z.toJSONSchema(drillSchema) };
}
