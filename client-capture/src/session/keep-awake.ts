/** Keeps the screen on while a source runs. The browser lets go when the page is hidden, so it is asked again when it comes back. */
export function keepAwake(): { release(): void } {
  let lock: WakeLockSentinel | null = null;
  let wanted = true;
  const ask = async (): Promise<void> => {
    if (!wanted || document.visibilityState !== "visible" || !("wakeLock" in navigator)) return;
    try {
      lock = await navigator.wakeLock.request("screen");
    } catch {
      // Refused with a low battery; the golfer then sees the screen go dark as usual.
    }
  };
  const onVisible = (): void => void ask();
  document.addEventListener("visibilitychange", onVisible);
  void ask();
  return {
    release() {
      wanted = false;
      document.removeEventListener("visibilitychange", onVisible);
      void lock?.release();
    },
  };
}
