// Long work done in steps beside the page: a little whenever the browser has nothing else to do.

/** A step is begun only while so much of the browser's spare time is left, in milliseconds. */
const LEAST_SPARE = 4;
/** The browser may be busy for so long before it is asked to make time all the same, in milliseconds. */
const PATIENCE = 1500;

/** Does all steps in spare moments, then calls `done`. The answer gives it up. */
export function inSteps(steps: Iterator<unknown, unknown>, done: () => void): () => void {
  let givenUp = false;
  let cancel = () => {};
  const go = (spare: () => number) => {
    do {
      if (givenUp) return;
      if (steps.next().done) return done();
    } while (spare() > LEAST_SPARE);
    cancel = whenSpare(go);
  };
  cancel = whenSpare(go);
  return () => {
    givenUp = true;
    cancel();
  };
}

/** Calls with what is left of the moment; browsers that tell of no spare moments get one step at a time. */
export function whenSpare(act: (spare: () => number) => void): () => void {
  if (typeof requestIdleCallback === 'undefined') {
    const timer = setTimeout(() => act(() => 0), 30);
    return () => clearTimeout(timer);
  }
  const asked = requestIdleCallback((moment) => act(() => moment.timeRemaining()), { timeout: PATIENCE });
  return () => cancelIdleCallback(asked);
}

/** The browser is let go on after so long at the latest, in milliseconds. */
const AT_A_TIME = 8;

/** Does all steps as soon as can be without holding the browser up. */
export async function gently(steps: Iterator<unknown, unknown>): Promise<void> {
  let began = performance.now();
  while (!steps.next().done) {
    if (performance.now() - began < AT_A_TIME) continue;
    await breath();
    began = performance.now();
  }
}

/** A moment for the browser to draw and to listen. */
export function breath(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}
