import { helloSchema, type Hello } from "@overcue/shared-geometry/wire/hello";
import { protocolVersion, versionRefusal } from "@overcue/shared-geometry/wire/version";
import { secretMatches } from "./secret-matches.ts";

export type RefusalCode = "wrong-secret" | "page-is-older" | "relay-is-older" | "bad-hello";

export type HelloVerdict =
  | { readonly ok: true; readonly hello: Hello }
  | { readonly ok: false; readonly code: RefusalCode; readonly why: string };

/**
 * Whether a page may speak with the relay. The protocol is judged before the rest of the hello, since an old page may
 * well greet in another shape; it learns only which side is old.
 */
export function judgeHello(presented: unknown, secret: string): HelloVerdict {
  const version = protocolOf(presented);
  const refusal = version === null ? null : versionRefusal(version);
  if (version !== null && refusal !== null) {
    return { ok: false, code: version < protocolVersion ? "page-is-older" : "relay-is-older", why: refusal };
  }
  const parsed = helloSchema.safeParse(presented);
  if (!parsed.success) {
    return { ok: false, code: "bad-hello", why: "This page did not say who it is: scan the pairing code again." };
  }
  if (!secretMatches(parsed.data.secret, secret)) {
    return {
      ok: false,
      code: "wrong-secret",
      why: "This pairing code is from another run of the relay: scan the code that it shows now.",
    };
  }
  return { ok: true, hello: parsed.data };
}

function protocolOf(presented: unknown): number | null {
  if (typeof presented !== "object" || presented === null || !("protocol" in presented)) return null;
  return Number.isSafeInteger(presented.protocol) ? Number(presented.protocol) : null;
}
