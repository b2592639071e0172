// A technique of the last patient must not stand there for the next: after some minutes without a touch or key the page clears.

const KEY = 'wallchart.clear-minutes';
const WARNING_MS = 20_000; // WCAG 2.2, 2.2.1: at least 20 seconds to say otherwise, by any touch or key

export const CHOICES = [2, 5, 10, 20];
export const minutes = () => (CHOICES.includes(Number(localStorage.getItem(KEY))) ? Number(localStorage.getItem(KEY)) : 5);
export const setMinutes = (chosen) => localStorage.setItem(KEY, chosen);

/** Calls `warn(true | false)` and `clear()`; `busy()` says whether there is anything to clear. */
export function watch({ busy, warn, clear }) {
  let warning = null;
  let clearing = null;
  const restart = () => {
    window.clearTimeout(warning);
    window.clearTimeout(clearing);
    warn(false);
    const all = minutes() * 60_000;
    warning = window.setTimeout(() => { if (busy()) warn(true); }, all - WARNING_MS);
    clearing = window.setTimeout(() => {
      warn(false);
      if (busy()) clear();
    }, all);
  };
  for (const kind of ['pointerdown', 'keydown', 'input']) document.addEventListener(kind, restart, { capture: true, passive: true });
  restart();
  return restart;
}
