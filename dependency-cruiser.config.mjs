const rule = (name, comment, from, to) => ({ name, comment, severity: "error", from: { path: from }, to });

/** @type {import("dependency-cruiser").IConfiguration} */
export default {
  forbidden: [
    rule("no-circles", "Two files that need each other are one file or three.", ".", { circular: true }),
    rule(
      "geometry-stands-alone",
      "shared-geometry imports no client, no server, nothing of Node.",
      "^shared-geometry",
      {
        path: "^(client-|server|tests|node:)",
      },
    ),
    rule("clients-stand-apart", "A client imports shared-geometry only.", "^client-capture", {
      path: "^(client-display|server|tests)",
    }),
    rule("display-stands-apart", "A client imports shared-geometry only.", "^client-display", {
      path: "^(client-capture|server|tests)",
    }),
    rule("server-stands-apart", "The server imports shared-geometry only.", "^server", { path: "^(client-|tests)" }),
    rule("practice-is-pure", "Practice rules know no store and no socket.", "^server/src/practice", {
      path: "^(server/src/(book|relay|tls|pairing)|node:)",
    }),
    rule(
      "shaft-knows-no-screen",
      "The tracker can be changed without touching a screen.",
      "^client-capture/src/(shaft|swing|station|picture|demo-motion)",
      {
        path: "^client-capture/src/(setup|link|frames|workers|pose)",
      },
    ),
  ],
  options: {
    tsConfig: { fileName: "tsconfig.base.json" },
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    exclude: { path: "node_modules|build" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "require", "node", "default"] },
  },
};
