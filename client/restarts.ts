/** Milliseconds to wait before each restart of a server that keeps stopping. */
export const delays: readonly number[] = [0, 500, 1_000, 2_000, 4_000];

/** A server that ran for longer than this is taken to be well again, in milliseconds. */
export const wellAfter = 180_000;

/**
 * Decides how a server that stopped is restarted. `afterStop(now)` gives the milliseconds to wait, or undefined when it
 * has stopped more often than there are delays within the time after which it counts as well. `forget()` starts anew.
 */
export function restartPolicy(): { afterStop(now: number): number | undefined; forget(): void } {
  let stops: number[] = [];
  return {
    afterStop(now) {
      stops = [...stops.filter((stop) => now - stop < wellAfter), now];
      return delays[stops.length - 1];
    },
    forget() {
      stops = [];
    },
  };
}
