import type { SetUpCheck } from "./set-up-check.ts";

/** What a browser lets its page know of the certificate; see `keepPage`. */
export type CertificateState = "looking" | "trusted" | "by-hand" | "cannot-tell";

export function certificateCheck(certificate: CertificateState): SetUpCheck {
  const id = "certificate";
  switch (certificate) {
    case "looking":
      return { id, state: "unknown", words: "Certificate: looking", todo: "" };
    case "trusted":
      return { id, state: "ok", words: "Certificate trusted", todo: "" };
    case "by-hand":
      return {
        id,
        state: "ok",
        words: "Certificate accepted by hand; page not kept",
        todo: "To install the page and open it away from the relay, use the trust page named on the ground screen.",
      };
    case "cannot-tell":
      return { id, state: "unknown", words: "Certificate: this browser does not tell", todo: "" };
  }
}
