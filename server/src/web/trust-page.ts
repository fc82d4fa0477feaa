import { trustPageStyle } from "./trust-page-style.ts";

export interface TrustPageFacts {
  /** Upper-case hex pairs with colons. */
  readonly fingerprint: string;
  /** The phone's page without the secret. */
  readonly phoneAddress: string;
}

interface Steps {
  readonly device: string;
  readonly file: { readonly path: string; readonly label: string };
  readonly steps: readonly string[];
}

const certificateFile = { path: "/overcue-authority.crt", label: "Download the certificate" };

/** Menu names as the makers have them; they move between versions, so each step also says what to look for. */
const devices: readonly Steps[] = [
  {
    device: "iPhone, iPad",
    file: { path: "/overcue.mobileconfig", label: "Download the profile" },
    steps: [
      "Open this page in Safari, tap the button and allow the download.",
      "Settings → General → VPN &amp; Device Management → Overcue local authority → Install.",
      "Settings → General → About → Certificate Trust Settings: switch <b>Overcue</b> on. Without this last step nothing changes.",
    ],
  },
  {
    device: "Android",
    file: certificateFile,
    steps: [
      "Tap the button and keep the file.",
      "Settings → Security (or Privacy) → Encryption &amp; credentials → Install a certificate → CA certificate. Searching the settings for “CA certificate” finds it.",
      "Choose <b>overcue-authority.crt</b> and confirm. Firefox has its own switch: Settings → About → tap the logo seven times → Secret settings → Use third party CA certificates.",
    ],
  },
  {
    device: "Mac",
    file: certificateFile,
    steps: [
      "Click the button, then open the file: Keychain Access asks where to put it. Choose <b>login</b>.",
      "Double-click <b>Overcue on …</b> in the list, open <b>Trust</b>, choose <b>Always Trust</b>, close the window and give your password.",
      "Start the browser again.",
    ],
  },
  {
    device: "Windows",
    file: certificateFile,
    steps: [
      "Click the button, open the file, then <b>Install Certificate…</b>.",
      "Current User → Place all certificates in the following store → Browse → <b>Trusted Root Certification Authorities</b> → Finish.",
      "Say yes to the question, then start the browser again.",
    ],
  },
  {
    device: "Linux",
    file: { path: "/overcue-authority.pem", label: "Download the certificate" },
    steps: [
      "Chrome, Chromium: Settings → Privacy and security → Security → Manage certificates → Custom (or Authorities) → Import, for web sites.",
      "Firefox: Settings → Privacy &amp; Security → Certificates → View Certificates → Authorities → Import, for web sites.",
      "Start the browser again.",
    ],
  },
];

/** The plain page that helps a device to trust the relay, or to go on without. `facts` hold no user's text. */
export function trustPage({ fingerprint, phoneAddress }: TrustPageFacts): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Overcue: trust this relay</title>
<style>${trustPageStyle}</style>
</head>
<body>
<main>
<h1>Trust this relay</h1>
<p class="lead">A browser lends its camera only to a page it trusts. Your relay is a program on your own laptop, so nobody
vouches for it but you. Do this once on each device, then scan the code on the ground screen.</p>
${devices.map(deviceSection).join("\n")}
<section class="check">
<h2>Check that it is yours</h2>
<p>The terminal on your laptop shows this number too. If the two differ, do not install the certificate:
somebody else is answering.</p>
<p class="number">${fingerprint}</p>
<p>The certificate was made on your laptop for this installation alone. It can vouch for names and addresses of a local
network, not for a web site, and its key never leaves the laptop. Remove it in the same place when you stop using Overcue.</p>
</section>
<section class="without">
<h2>Go on without it</h2>
<p>You can: open <a href="${phoneAddress}">${phoneAddress}</a>, or scan the code, and tell the browser to go on past its
warning (“Advanced”, “Show details”, then “visit” or “proceed”). The traffic is encrypted all the same. What it costs:</p>
<ul>
<li>The warning comes back, on some devices each time.</li>
<li>The page cannot be installed as an app and keeps nothing for offline use.</li>
<li>Some browsers then refuse the fast connection; the relay falls back to a slower one by itself, and the live picture of the
ground lags more.</li>
<li>The browser cannot tell your relay from somebody else’s on the same network. On a network that you share with
strangers, install the certificate.</li>
</ul>
</section>
</main>
</body>
</html>
`;
}

function deviceSection({ device, file, steps }: Steps): string {
  return `<details>
<summary>${device}</summary>
<p><a class="button" href="${file.path}" download>${file.label}</a></p>
<ol>
${steps.map((step) => `<li>${step}</li>`).join("\n")}
</ol>
</details>`;
}
