import type { Direction } from "@overcue/shared-geometry/world-shaft";
import type { CameraHints } from "../station/find-sticks.ts";
import { downInCamera } from "../station/down-in-camera.ts";

/** Sensor and lens are not mounted quite alike; radians, one sd. Common practice, no source. */
const mountingSd = 0.02;
/** Each new reading moves the mean by this share. Lower: steadier and slower. */
const freshShare = 0.05;

/** Which way is down, from the motion sensor, as long as it is listened to. */
export interface GravitySense {
  /** Null where there is no sensor, it was not granted, or the phone was moved a moment ago. */
  read(): NonNullable<CameraHints["gravity"]> | null;
  stop(): void;
}

/** Safari asks; the DOM types do not know of it. */
interface AskedMotion {
  requestPermission?: () => Promise<"granted" | "denied">;
}

/** Listens to the motion sensor. To be called from a tap: one browser asks for leave then, and only then. Never rejects. */
export function senseGravity(): GravitySense {
  let down: Direction | null = null;
  let stopped = false;
  const onMotion = ({ accelerationIncludingGravity: felt }: DeviceMotionEvent): void => {
    const { x = null, y = null, z = null } = felt ?? {};
    if (x === null || y === null || z === null) return;
    const now = downInCamera({ x, y, z }, screen.orientation.angle);
    down = now === null || down === null ? now : mixed(down, now);
  };
  const listen = (): void => {
    if (!stopped) addEventListener("devicemotion", onMotion);
  };
  const motion = "DeviceMotionEvent" in globalThis ? (DeviceMotionEvent as unknown as AskedMotion) : null;
  if (motion?.requestPermission === undefined) listen();
  else {
    void motion.requestPermission().then(
      (answer) => {
        if (answer === "granted") listen();
      },
      () => undefined,
    );
  }
  return {
    read: () => (down === null ? null : { down, sd: mountingSd }),
    stop() {
      stopped = true;
      removeEventListener("devicemotion", onMotion);
    },
  };
}

function mixed(mean: Direction, now: Direction): Direction {
  const mix = (a: number, b: number): number => a + freshShare * (b - a);
  const sum = { x: mix(mean.x, now.x), y: mix(mean.y, now.y), z: mix(mean.z, now.z) };
  const size = Math.hypot(sum.x, sum.y, sum.z);
  return { x: sum.x / size, y: sum.y / size, z: sum.z / size };
}
