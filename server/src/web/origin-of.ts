/** An origin as browsers write it: IPv6 addresses in brackets. */
export function originOf(scheme: "http" | "https", host: string, port: number): string {
  const name = host.includes(":") && !host.startsWith("[") ? `[${host}]` : host;
  return `${scheme}://${name}:${port}`;
}
