/** The Battery Status API (W3C), which Chromium has and the DOM types do not. */
interface Battery extends EventTarget {
  readonly level: number;
  readonly charging: boolean;
}

/** Tells the battery's level (0 to 1) now and at each change; null while charging. Silent where the browser has no such thing. */
export async function watchBattery(tell: (level: number | null) => void): Promise<void> {
  if (!("getBattery" in navigator) || typeof navigator.getBattery !== "function") return;
  const battery = await (navigator as { getBattery(): Promise<Battery> }).getBattery();
  const tellNow = (): void => {
    tell(battery.charging ? null : battery.level);
  };
  battery.addEventListener("levelchange", tellNow);
  battery.addEventListener("chargingchange", tellNow);
  tellNow();
}
