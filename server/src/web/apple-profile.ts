import { Buffer } from "node:buffer";
import { createHash } from "node:crypto";

/**
 * A configuration profile that installs the authority on iOS and iPadOS (Apple's Configuration Profile Reference,
 * payload com.apple.security.root). The ids follow from the certificate: installing it twice replaces it.
 */
export function appleProfile(authorityDer: Uint8Array): string {
  const certificate = Buffer.from(authorityDer)
    .toString("base64")
    .replaceAll(/.{1,64}/g, "\n        $&");
  return `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE plist PUBLIC "-//Apple//DTD PLIST 1.0//EN" "http://www.apple.com/DTDs/PropertyList-1.0.dtd">
<plist version="1.0">
<dict>
  <key>PayloadContent</key>
  <array>
    <dict>
      <key>PayloadCertificateFileName</key><string>overcue-authority.crt</string>
      <key>PayloadContent</key>
      <data>${certificate}
      </data>
      <key>PayloadDescription</key><string>Lets this device trust the Overcue relay on your own network.</string>
      <key>PayloadDisplayName</key><string>Overcue local authority</string>
      <key>PayloadIdentifier</key><string>overcue.local.authority.certificate</string>
      <key>PayloadType</key><string>com.apple.security.root</string>
      <key>PayloadUUID</key><string>${uuidFrom(authorityDer, "certificate")}</string>
      <key>PayloadVersion</key><integer>1</integer>
    </dict>
  </array>
  <key>PayloadDisplayName</key><string>Overcue local authority</string>
  <key>PayloadIdentifier</key><string>overcue.local.authority</string>
  <key>PayloadRemovalDisallowed</key><false/>
  <key>PayloadType</key><string>Configuration</string>
  <key>PayloadUUID</key><string>${uuidFrom(authorityDer, "profile")}</string>
  <key>PayloadVersion</key><integer>1</integer>
</dict>
</plist>
`;
}

/** A UUID of version 8 (RFC 9562: own content) out of a digest. */
function uuidFrom(der: Uint8Array, purpose: string): string {
  const bytes = createHash("sha256").update(purpose).update(der).digest().subarray(0, 16);
  bytes.writeUInt8((bytes.readUInt8(6) & 0x0f) | 0x80, 6);
  bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8);
  const hex = bytes.toString("hex").toUpperCase();
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}
