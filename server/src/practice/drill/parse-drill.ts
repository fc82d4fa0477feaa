import { parseFile } from "../parse-file.ts";
import { drillSchema, type Drill } from "./drill-schema.ts";

export type ParsedDrill = { readonly ok: true; readonly drill: Drill } | { readonly ok: false; readonly why: string };

/** A drill out of a JSON text, or one sentence that names the line and the field. */
export function parseDrill(json: string): ParsedDrill {
  const parsed = parseFile(json, drillSchema, "drill");
  return parsed.ok ? { ok: true, drill: parsed.value } : parsed;
}
