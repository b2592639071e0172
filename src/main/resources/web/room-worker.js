'use strict';
// Keeps the room page with all its files at the workstation, so that it opens without the service. Never keeps an answer of the
// interface: what a room may be told offline is in its signed pack.

/** The files of this build, each with its digest: a file that is not exactly this one is not kept. */
const FILES = {files};
const CACHE = 'wallchart-room-{build}';
const PAGE = '{page}';

/** The page of a room, and nothing that merely looks like one: whatever else stands there, the service answers. */
const ROOM = /^\/rooms\/[a-z0-9]([a-z0-9-]{0,30}[a-z0-9])?$/;

addEventListener('install', (event) => {
  event.waitUntil(keepAll());
});

/** All of them or none: a build is never mixed with another. */
async function keepAll() {
  try {
    const cache = await caches.open(CACHE);
    await cache.addAll(Object.entries(FILES).map(([path, integrity]) => new Request(path, { integrity, cache: 'no-store', credentials: 'omit' })));
  } catch (failed) {
    await caches.delete(CACHE);
    throw failed;
  }
}

addEventListener('activate', (event) => {
  event.waitUntil(dropOthers().then(() => clients.claim()));
});

async function dropOthers() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith('wallchart-room-') && name !== CACHE).map((name) => caches.delete(name)));
}

addEventListener('message', (event) => {
  if (event.data === 'change over') skipWaiting();
});

addEventListener('fetch', (event) => {
  const { origin, pathname } = new URL(event.request.url);
  if (event.request.method !== 'GET' || origin !== location.origin) return;
  const path = event.request.mode === 'navigate' && ROOM.test(pathname) ? PAGE : pathname;
  if (path in FILES) event.respondWith(kept(path, event.request));
});

async function kept(path, request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(path, { ignoreVary: true })) ?? fetch(request);
}
