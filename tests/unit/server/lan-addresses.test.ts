import type { NetworkInterfaceInfo } from "node:os";
import { expect, it } from "vitest";
import { lanAddresses } from "@overcue/server/tls/lan-addresses";
import { subjectNames } from "@overcue/server/tls/subject-names";
import { originOf } from "@overcue/server/web/origin-of";

function v4(address: string, internal = false): NetworkInterfaceInfo {
  return { family: "IPv4", address, internal, netmask: "", mac: "", cidr: null };
}
function v6(address: string, internal = false): NetworkInterfaceInfo {
  return { family: "IPv6", address, internal, netmask: "", mac: "", cidr: null, scopeid: 0 };
}

it("P4 the home network comes first, container bridges and IPv6 last, what no browser reaches not at all", () => {
  const interfaces = {
    lo: [v4("127.0.0.1", true), v6("::1", true)],
    docker0: [v4("172.17.0.1")],
    wlan0: [v6("fe80::1"), v6("fd00::7"), v4("192.168.1.9")],
    eth0: [v4("10.0.0.3"), v4("169.254.8.8")],
    gone: undefined,
  };
  expect(lanAddresses(interfaces)).toEqual(["192.168.1.9", "10.0.0.3", "172.17.0.1", "169.254.8.8", "fd00::7"]);
  expect(lanAddresses({})).toEqual([]);
});

it("T1 names are the machine's own, sorted, each once", () => {
  expect(subjectNames(["192.168.1.9", "127.0.0.1", "192.168.1.9"], "Annas-Laptop.home")).toEqual({
    dns: ["annas-laptop.local", "localhost"],
    ip: ["127.0.0.1", "192.168.1.9", "::1"],
  });
  expect(subjectNames([], "Anna's laptop").dns).toEqual(["localhost"]);
  expect(subjectNames(["not an address"], "localhost").ip).toEqual(["127.0.0.1", "::1"]);
});

it("P4 an IPv6 address stands in brackets", () => {
  expect(originOf("https", "fd00::7", 8443)).toBe("https://[fd00::7]:8443");
  expect(originOf("http", "[fd00::7]", 80)).toBe("http://[fd00::7]:80");
  expect(originOf("https", "192.168.1.9", 8443)).toBe("https://192.168.1.9:8443");
});
