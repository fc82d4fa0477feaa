/** How often something happened a second, over the last two seconds. Times in milliseconds, rising. */
export interface RateMeter {
  tick(now: number): void;
  perSecond(now: number): number;
}

const span = 2000;

export function makeRateMeter(): RateMeter {
  let ticks: number[] = [];
  const prune = (now: number): void => {
    ticks = ticks.filter((t) => t > now - span);
  };
  return {
    tick(now) {
      ticks.push(now);
      if (ticks.length > 1000) prune(now);
    },
    perSecond(now) {
      prune(now);
      const first = ticks[0];
      const last = ticks[ticks.length - 1];
      if (first === undefined || last === undefined || last <= first) return 0;
      return (1000 * (ticks.length - 1)) / (last - first);
    },
  };
}
