// Installs the room page at this workstation, so that it opens without the service: importing this script is enough.

const LOOK_AGAIN_MS = 60 * 60_000;
let listeners = [];

/**
 * Called with a function when a newer build of the page lies ready; calling that function changes over to it, which loads the page
 * anew: call it when nobody is in the middle of something. Without a call the change comes when the last window of the page closes.
 */
export function whenNewer(listener) {
  listeners.push(listener);
}

async function install() {
  if (!('serviceWorker' in navigator)) return false;
  try {
    const registration = await navigator.serviceWorker.register('/room-worker.js', { scope: '/rooms/', updateViaCache: 'none' });
    watch(registration);
    setInterval(() => registration.update().catch(() => {}), LOOK_AGAIN_MS);
    navigator.storage?.persist?.();
    await installed(registration);
    return true;
  } catch {
    return Boolean(await navigator.serviceWorker.getRegistration('/rooms/').catch(() => null));
  }
}

function installed(registration) {
  return registration.active ? null : new Promise((done, failed) => {
    const worker = registration.installing ?? registration.waiting;
    worker.addEventListener('statechange', () => {
      if (worker.state === 'activated') done();
      if (worker.state === 'redundant') failed(new Error('the page could not be installed'));
    });
  });
}

function watch(registration) {
  const tell = () => {
    if (registration.waiting && registration.active) listeners.forEach((listener) => listener(() => changeOver(registration)));
  };
  tell();
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', tell));
}

function changeOver(registration) {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  registration.waiting?.postMessage('change over');
}

/** Resolves to whether the page is installed: it is not where the browser cannot, or the page came over plain http from elsewhere. */
export const whenInstalled = install();
