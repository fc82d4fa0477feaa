import type { z } from "zod";

export type ReadMessage<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly why: string };

/** A message as its schema has it, or the path and nature of the first thing that is wrong with it. */
export function readMessage<T>(schema: z.ZodType<T>, message: unknown): ReadMessage<T> {
  const parsed = schema.safeParse(message);
  if (parsed.success) return { ok: true, value: parsed.data };
  const issue = parsed.error.issues[0];
  const path = issue === undefined || issue.path.length === 0 ? "the message itself" : issue.path.join(".");
  return { ok: false, why: `${path}: ${issue?.message ?? "not readable"}` };
}
