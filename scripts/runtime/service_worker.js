/* Keeps one whole release of the site for use without a network. Each release has a cache of
   its own, filled completely or not at all; a tab is answered from the release it was opened
   with until it is reloaded. The build puts RELEASE and FILES ([address, sha256]) above. */
/* global RELEASE, FILES */
"use strict";

const SCOPE = registration.scope;
const PREFIX = "springline " + SCOPE + " "; // several copies may live on one origin
const TABS = "springline-tabs " + SCOPE;
const NETWORK = "none"; // the release of a tab whose page is not of any release stored here
const LISTED = new Map(FILES);
const LARGE = /^runtime\/[^/]+\//; // named by their content, and last to be fetched
const WANTED = /^assets\/places\//; // large, and of few pages: kept once somebody asked for them
const AT_ONCE = 6;
const LATER = 5_000; // ms; a page has started by then, and what it was sent may be looked over
const tabs = new Map(); // client -> release; a copy lies in TABS, for the worker may be stopped
const arriving = new Set(); // clients whose page is on its way and who are in no list yet
const sent = new Set(); // addresses answered from the store since this worker was started
const looked = new Map(); // address -> promise that its stored file was looked over

const cacheOf = (release) => caches.open(PREFIX + release);

/* "head/" for every address of that page, whatever its fragment, query or spelling. */
function addressOf(url) {
  const plain = url.split(/[?#]/)[0];
  if (!plain.startsWith(SCOPE)) return null;
  return plain.slice(SCOPE.length).replace(/(^|\/)index\.html$/, "$1");
}

/* Disks fail, and other scripts of this origin may write to its stores. */
async function isWhole(reply, sha256) {
  const digest = await crypto.subtle.digest("SHA-256", await reply.clone().arrayBuffer());
  return sha256 === "sha256-" + btoa(String.fromCharCode(...new Uint8Array(digest)));
}

/* The browser refuses what does not have the hash the build wrote down, so that a file of
   another release cannot slip in while the site is being replaced. What the browser's own cache
   holds may be damaged too: then past it. */
async function fetchWhole(url, integrity, large) {
  try {
    return await fetch(url, { integrity, cache: large ? "default" : "no-cache" });
  } catch (error) {
    if (!large) throw error;
    return fetch(url, { integrity, cache: "reload" });
  }
}

async function fetchListed([address, sha256]) {
  const url = SCOPE + address;
  const large = LARGE.test(address) || WANTED.test(address);
  const held = large && (await caches.match(url)); // the same as long as its hash is
  if (held && (await isWhole(held, sha256))) return held;
  const reply = await fetchWhole(url, sha256, large);
  const headers = new Headers(reply.headers);
  headers.delete("Content-Encoding"); // the body is unpacked already
  headers.delete("Content-Length");
  headers.delete("Vary"); // every reader gets the same
  return new Response(await reply.blob(), { headers }); // a redirected reply may not be kept
}

async function fill() {
  const cache = await cacheOf(RELEASE);
  const wanted = [];
  for (const file of FILES.filter(([address]) => WANTED.test(address))) {
    if (await caches.match(SCOPE + file[0])) wanted.push(file); // of the release before
  }
  const small = FILES.filter(([address]) => !LARGE.test(address) && !WANTED.test(address));
  const large = [...wanted, ...FILES.filter(([address]) => LARGE.test(address))];
  const keep = async (file) => cache.put(SCOPE + file[0], await fetchListed(file));
  try {
    for (let at = 0; at < small.length; at += AT_ONCE) {
      await Promise.all(small.slice(at, at + AT_ONCE).map(keep));
    }
    for (const file of large) await keep(file);
  } catch (error) {
    await caches.delete(PREFIX + RELEASE);
    throw error;
  }
}

const noteOf = (id) => SCOPE + "?tab=" + encodeURIComponent(id);

async function note(id, release) {
  if (!id) return;
  tabs.set(id, release);
  try {
    await (await caches.open(TABS)).put(noteOf(id), new Response(release));
  } catch {
    /* no room: the copy in memory does while this worker runs */
  }
}

async function releaseOf(id) {
  if (!tabs.has(id)) {
    const held = await (await caches.open(TABS)).match(noteOf(id));
    tabs.set(id, held ? await held.text() : RELEASE);
  }
  return tabs.get(id);
}

async function forgetClosed() {
  const open = new Set((await clients.matchAll({ includeUncontrolled: true })).map(({ id }) => id));
  open.forEach((id) => arriving.delete(id));
  const notes = await caches.open(TABS);
  for (const request of await notes.keys()) {
    const id = new URL(request.url).searchParams.get("tab");
    if (open.has(id) || arriving.has(id)) continue;
    tabs.delete(id);
    await notes.delete(request);
  }
}

/* Older releases go when no open tab was opened with them. */
async function sweep() {
  const notes = await caches.open(TABS);
  const replies = await Promise.all((await notes.keys()).map((request) => notes.match(request)));
  const used = await Promise.all(replies.filter(Boolean).map((reply) => reply.text()));
  for (const name of await caches.keys()) {
    const release = name.startsWith(PREFIX) ? name.slice(PREFIX.length) : RELEASE;
    if (release !== RELEASE && !used.includes(release)) await caches.delete(name);
  }
}

/* The tab that made the first visit is of this release: the worker was fetched with it. */
async function welcome() {
  const names = await caches.keys();
  if (names.filter((name) => name.startsWith(PREFIX)).length > 1) return;
  for (const { id } of await clients.matchAll({ includeUncontrolled: true })) await note(id, RELEASE);
  await clients.claim();
}

async function stored(address, release) {
  try {
    return await (await cacheOf(release)).match(SCOPE + address);
  } catch {
    return undefined; // the store failed: the network may not
  }
}

async function mend(address) {
  const sha256 = LISTED.get(address);
  const held = await stored(address, RELEASE);
  if (!held || (await isWhole(held, sha256))) return;
  const whole = await fetchListed([address, sha256]);
  await (await cacheOf(RELEASE)).put(SCOPE + address, whole);
}

/* Once in this worker's life; again where it could not be mended for want of a network. */
function lookOver(address) {
  if (!looked.has(address)) looked.set(address, mend(address).catch(() => looked.delete(address)));
  return looked.get(address);
}

/* A file of this release. Nobody waits for its hash: it is looked over later, or when it is asked
   for again, as by a start that failed and is tried once more. */
async function ours(event, address) {
  if (!LISTED.has(address)) return undefined;
  if (sent.has(address)) {
    await lookOver(address);
  } else {
    sent.add(address);
    const later = new Promise((resolve) => setTimeout(resolve, LATER));
    event.waitUntil(later.then(() => lookOver(address)));
  }
  return stored(address, RELEASE);
}

/* A file that is kept from the first time that it is asked for. */
async function wantedNow(event, address) {
  const reply = await fetchListed([address, LISTED.get(address)]);
  const copy = reply.clone();
  event.waitUntil(cacheOf(RELEASE).then((cache) => cache.put(SCOPE + address, copy)).catch(() => {}));
  return reply;
}

/* A page: of this release where it is listed, else from the network, else "not here". */
async function page(event, address) {
  const id = event.resultingClientId;
  const keepNote = (release) => event.waitUntil(note(id, release));
  arriving.add(id);
  if (!LISTED.has(address) && LISTED.has(address + "/")) {
    return Response.redirect(SCOPE + address + "/" + new URL(event.request.url).search);
  }
  const held = await ours(event, address);
  if (held) {
    keepNote(RELEASE);
    return held;
  }
  if (LISTED.has(address)) event.waitUntil(fill().catch(() => {})); // the store was emptied
  try {
    const reply = await fetch(event.request);
    keepNote(NETWORK);
    return reply;
  } catch (error) {
    const missing = await stored("404.html", RELEASE);
    if (!missing) throw error;
    keepNote(RELEASE);
    return new Response(missing.body, { status: 404, headers: missing.headers });
  }
}

/* A part of a page: of the release its tab was opened with; a name that holds its content
   is right from any. */
async function part(event, address) {
  arriving.delete(event.clientId);
  const release = await releaseOf(event.clientId).catch(() => RELEASE);
  const large = LARGE.test(address);
  const held =
    release === RELEASE || large
      ? await ours(event, address)
      : release !== NETWORK && (await stored(address, release));
  if (held) return held;
  if (release === RELEASE && WANTED.test(address) && LISTED.has(address)) {
    return wantedNow(event, address).catch(() => fetch(event.request));
  }
  const named = large ? await caches.match(SCOPE + address).catch(() => {}) : undefined;
  return named || fetch(event.request);
}

addEventListener("install", (event) => event.waitUntil(fill().then(() => skipWaiting())));
addEventListener("activate", (event) => event.waitUntil(welcome().then(sweep)));
addEventListener("fetch", (event) => {
  const address = addressOf(event.request.url);
  if (event.request.method !== "GET" || address === null) return;
  if (event.request.mode !== "navigate") {
    event.respondWith(part(event, address));
    return;
  }
  event.respondWith(page(event, address));
  event.waitUntil(forgetClosed().then(sweep).catch(() => {}));
});
