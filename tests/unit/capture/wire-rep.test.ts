import { expect, it } from "vitest";
import { wireNoRep } from "@overcue/client-capture/link/wire-rep";
import { noRepSchema } from "@overcue/shared-geometry/wire/rep";

const repId = "6f1c2f0e-7a52-4a8e-9a63-1f0f6a0c5b11";

it("K3.7 why a swing is not counted is told where it was swung up, and reads as the wire has it", () => {
  const told = wireNoRep({ why: "club-lost", swungUp: true }, repId);
  expect(noRepSchema.parse(told)).toEqual({ repId, why: "club-lost" });
  expect(wireNoRep({ why: "club-lost", swungUp: false }, repId)).toEqual({ repId, why: null });
});

it("K3.7 what nobody takes for a rep is not said to be none, however high the club was", () => {
  expect(wireNoRep({ why: "hands-high", swungUp: true }, repId).why).toBeNull();
  expect(wireNoRep({ why: "walked", swungUp: true }, repId).why).toBeNull();
});
