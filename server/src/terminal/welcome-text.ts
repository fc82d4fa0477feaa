import qrcode from "qrcode";
import { pairingAddress } from "@overcue/shared-geometry/wire/pairing";
import type { Application } from "../app.ts";

/** What the terminal shows once the relay runs: where to go, with codes to scan. Every address holds this run's secret. */
export async function welcomeText(application: Application, ground: string): Promise<string> {
  const { phone, coach, trust } = application.pairing();
  const others = application.origins().slice(1);
  return [
    "",
    "Ground screen, on this machine:",
    `  ${ground}`,
    "",
    "Phone (camera): scan",
    await code(phone),
    `  ${phone}`,
    "",
    "Coach's handheld: scan",
    await code(coach),
    `  ${coach}`,
    "",
    "Ground screen on another device:",
    `  ${pairingAddress(application.origins()[0] ?? "", "display", application.secret)}`,
    "",
    "Certificate warning? Once per device, open the trust page and check this number:",
    `  ${trust ?? ""}`,
    `  ${application.certificates().authority.fingerprint}`,
    ...(others.length === 0 ? [] : ["", `Also reachable as ${others.join(", ")}`]),
    "",
    "The codes hold for this run only. Ctrl-C ends the relay.",
    "",
  ].join("\n");
}

/** Half blocks, two dots a character high: a code of 45 dots fits a terminal of 80 columns and 24 lines nearly. */
async function code(address: string): Promise<string> {
  return qrcode.toString(address, { type: "terminal", small: true, errorCorrectionLevel: "L" });
}
