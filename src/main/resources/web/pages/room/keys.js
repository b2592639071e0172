// Typing anywhere on the page: letters find, digits are the thickness, + and - step it, Esc clears for the next patient.

const OFF = 'wallchart.keys';

export const anywhere = () => localStorage.getItem(OFF) !== 'off';

export function setAnywhere(on) {
  if (on) localStorage.removeItem(OFF);
  else localStorage.setItem(OFF, 'off');
}

const finder = () => document.getElementById('find');
const thickness = () => document.getElementById('thickness');

let early = '';

/** What was typed to find something before there was anything to find; once. */
export function takeEarly() {
  const typed = early;
  early = '';
  return typed.trim();
}

/** `act` as room.js has it; `look()` gives the state. */
export function listen(act, look) {
  document.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing || event.defaultPrevented) return;
    if (document.querySelector('dialog[open]') || look().asksToken) return;
    if (event.key === 'Escape') {
      early = '';
      act.clear();
      event.preventDefault();
      return;
    }
    if (event.target.closest?.('[data-own-keys], select')) return;
    const own = event.target === finder() || event.target === thickness();
    if (!own && !anywhere()) return;
    if (taken(event, act, look())) event.preventDefault();
  });
}

/** True where the key is dealt with here; else it goes on to where the focus is now. */
function taken(event, act, state) {
  const { key, target } = event;
  if (!finder()) return hold(key); // the chart is still being opened: what is left of words would find something else
  if ((key === 'ArrowDown' || key === 'ArrowUp') && target.type !== 'range' && act.mark(key === 'ArrowDown' ? 1 : -1)) return true;
  if (key === 'Enter' && target === finder()) return act.chooseMarked('keys');
  if ((key === '+' || key === '-') && state.chosen) return act.step(key === '+' ? 1 : -1);
  if (key === '?' || key === '/') {
    act.derive();
    return true;
  }
  if (/^\d$/.test(key) || ((key === '.' || key === ',') && state.chosen)) return beginThickness(target, act, state);
  if (/^\p{L}$/u.test(key) && target !== finder()) {
    act.search('');
    finder().focus();
  }
  return false;
}

/** Letters and blanks wait; nothing else means anything yet. */
function hold(key) {
  const waits = /^\p{L}$/u.test(key) || (key === ' ' && early !== '');
  if (waits) early += key;
  return waits;
}

/** The digit itself is typed by the browser into the field that has the focus by then. */
function beginThickness(target, act, state) {
  if (!state.chosen && !act.chooseMarked('keys')) return false;
  if (target !== thickness()) {
    thickness().focus();
    thickness().select();
  }
  return false;
}
