import { findNodeAtLocation, parseTree, printParseErrorCode, type Node, type ParseError } from "jsonc-parser";
import type { z } from "zod";

export type ParsedFile<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly why: string };

/**
 * A JSON text checked against a schema. What is wrong comes back as one sentence with the line (from 1) and the field: the first fault only, since the
 * others often follow from it. `what` names the file's kind in the sentence.
 */
export function parseFile<T>(text: string, schema: z.ZodType<T>, what: string): ParsedFile<T> {
  const errors: ParseError[] = [];
  const tree = parseTree(text, errors, { disallowComments: true, allowTrailingComma: false });
  const broken = errors[0];
  if (broken || !tree) {
    const fault = broken ? inWords(printParseErrorCode(broken.error)) : "the file is empty";
    return { ok: false, why: `This ${what} file is not JSON: line ${lineAt(text, broken?.offset ?? 0)}, ${fault}.` };
  }
  const value: unknown = JSON.parse(text);
  const checked = schema.safeParse(value);
  if (checked.success) return { ok: true, value: checked.data };
  const { path, message } = deepest(checked.error.issues);
  const field = fieldName(path);
  const line = lineAt(text, nearestNode(tree, path).offset);
  return { ok: false, why: `This ${what} file does not fit: line ${line}, field ${field}: ${message}.` };
}

interface Fault {
  readonly path: readonly PropertyKey[];
  readonly message: string;
}

/** The first fault; where it is "fits none of several forms", the fault of the form that came farthest. */
function deepest(issues: readonly z.core.$ZodIssue[]): Fault {
  const first = issues[0];
  if (!first) return { path: [], message: "unknown fault" };
  if (first.code !== "invalid_union") return { path: first.path, message: first.message };
  const inner = first.errors
    .map((form) => deepest(form))
    .toSorted((a, b) => b.path.length - a.path.length)
    .at(0);
  return inner ? { path: [...first.path, ...inner.path], message: inner.message } : first;
}

/** The node at the path, or the last one on the way to it (a missing field is shown where it is missed). */
function nearestNode(tree: Node, path: readonly PropertyKey[]): Node {
  for (let length = path.length; length > 0; length--) {
    const part = path.slice(0, length).map((key) => (typeof key === "number" ? key : String(key)));
    const node = findNodeAtLocation(tree, part);
    if (node) return node;
  }
  return tree;
}

function fieldName(path: readonly PropertyKey[]): string {
  return path.length === 0 ? "(the whole file)" : path.map(String).join(".");
}

function lineAt(text: string, offset: number): number {
  return text.slice(0, offset).split("\n").length;
}

/** "CommaExpected" as "comma expected". */
function inWords(code: string): string {
  return code.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
}
