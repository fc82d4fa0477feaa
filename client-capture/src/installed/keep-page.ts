import type { CertificateState } from "../checks/certificate-check.ts";

/**
 * Lets the browser keep the page, so that it opens while the relay is away and can be installed; answers what that tells of the certificate. A browser
 * keeps pages only for a certificate that it trusts: one whose warning was clicked away gives the camera, but no service worker. Where the
 * browser refuses without naming the certificate (a private window does so too), nothing is known.
 */
export async function keepPage(): Promise<CertificateState> {
  if (!isSecureContext || !("serviceWorker" in navigator)) return "cannot-tell";
  try {
    const registration = await navigator.serviceWorker.register("/phone/service-worker.js", {
      scope: "/phone/",
      updateViaCache: "none",
    });
    void registration.update().catch(() => undefined);
    return "trusted";
  } catch (error) {
    const why = error instanceof Error ? error.message : "";
    return /certificate/i.test(why) ? "by-hand" : "cannot-tell";
  }
}
