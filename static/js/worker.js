// Keeps the round for a cellar without signal. The server puts VERSION and SHELL (addresses that change with their content)
// before this text. Of the pages Today and the how-tos that were
// read are kept, for one member at a time; the ticks are kept elsewhere, by kept.js.
const SHELL_CACHE = "warmshelf-shell-" + VERSION;
const PAGES = "warmshelf-pages";
const PATIENCE_MS = 3000;
const WHOSE = "X-Warmshelf-Member";
const LEAVING = /^\/(sign-out|sign-in|settings\/erasure|in\/|join\/|open\/|tablet\/)/;

importScripts(...SHELL.filter((address) => /\/round\/(kept|send)\.js$/.test(address)));

self.addEventListener("install", (event) => event.waitUntil(keepShell()));

async function keepShell() {
  const cache = await caches.open(SHELL_CACHE);
  await cache.addAll(SHELL);
  const offline = await fetch("/offline", { credentials: "omit" });
  if (!offline.ok) throw new Error("the offline page is missing");
  await cache.put("/offline", offline);
}

self.addEventListener("activate", (event) => event.waitUntil(begin()));

async function begin() {
  for (const name of await caches.keys()) {
    if (name.startsWith("warmshelf-shell-") && name !== SHELL_CACHE) await caches.delete(name);
  }
  await self.clients.claim();
}

self.addEventListener("message", (event) => {
  if (event.data === "take-over") self.skipWaiting();
  if (event.data === "keep-today") event.waitUntil(fetch("/today").then(keepPage).catch(() => {}));
});

self.addEventListener("sync", (event) => {
  if (event.tag === "round") event.waitUntil(sendAll());
});

async function sendAll() {
  const waiting = (await self.roundKept.all()).filter(self.roundKept.waits);
  const ends = [];
  for (const member of new Set(waiting.map((tick) => tick.member))) ends.push(await self.roundSend(member));
  new BroadcastChannel("warmshelf-round").postMessage("sent");
  // The browser tries again later when this fails; signing in is for the person to do.
  if (ends.some((end) => ["no-signal", "no-server", "trouble"].includes(end))) throw new Error("not all is sent");
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (url.origin !== self.location.origin) return;
  if (request.method === "POST" && LEAVING.test(url.pathname)) event.waitUntil(caches.delete(PAGES));
  if (request.method !== "GET") return;
  if (url.pathname.startsWith("/static/")) event.respondWith(asset(request, url));
  else if (request.mode !== "navigate") return;
  else if (url.pathname === "/today") today(event, url);
  else if (isHowTo(url)) howTo(event, url);
  else event.respondWith(fetch(request).catch(offlinePage));
});

async function asset(request, url) {
  const found = await caches.match(request);
  if (found) return found;
  try {
    return await fetch(request);
  } catch (lost) {
    // A page kept before an update names its styles by their old address.
    const name = url.pathname.replace(/^\/static\/[0-9a-f]+\//, "/");
    const newer = SHELL.find((address) => address.endsWith(name));
    const instead = newer && (await caches.match(newer));
    if (instead) return instead;
    throw lost;
  }
}

function today(event, url) {
  event.respondWith(answer(ask(event, url), url));
}

function isHowTo(url) {
  return url.pathname === "/how-to" || url.pathname.startsWith("/how-to/");
}

function howTo(event, url) {
  const network = fetch(event.request).then((reply) => {
    event.waitUntil(keepPage(reply).catch(() => {}));
    return reply;
  });
  event.respondWith(answer(network, url));
}

/** Asks for the round, and says which page is kept, so that it need not come again while nothing has changed. */
async function ask(event, url) {
  const page = await (await caches.open(PAGES)).match(nameOf(url));
  const stamp = url.searchParams.get("show") === "one" ? null : page?.headers.get("ETag");
  const reply = stamp
    ? await fetch(url, { headers: { Accept: "text/html", "If-None-Match": stamp }, redirect: "manual", cache: "no-store" })
    : await fetch(event.request);
  if (reply.status === 304) return page;
  event.waitUntil(keepPage(reply).catch(() => {}));
  return reply;
}

async function answer(network, url) {
  const waited = new Promise((resolve) => setTimeout(resolve, PATIENCE_MS, null));
  const first = await Promise.race([network.catch(() => undefined), waited]);
  if (first && first.status < 500) return first;
  const page = await keptPage(url);
  if (page) return page;
  return first ?? network.catch(offlinePage);
}

/** Keeps a good round and nothing else; another member's goes. */
async function keepPage(reply) {
  const member = reply.headers.get(WHOSE);
  if (!reply.ok || reply.redirected || !member) return;
  const copy = reply.clone();
  for (const request of await (await caches.open(PAGES)).keys()) {
    const old = await caches.match(request, { cacheName: PAGES });
    if (old && old.headers.get(WHOSE) !== member) await caches.delete(PAGES);
  }
  const url = new URL(reply.url);
  if (url.searchParams.get("show") === "one") return;
  await (await caches.open(PAGES)).put(nameOf(url), copy);
}

async function keptPage(url) {
  const pages = await caches.open(PAGES);
  // Without its crop a how-to says the same but for a few lines; of another crop it would mislead.
  if (isHowTo(url)) return (await pages.match(nameOf(url))) ?? pages.match(url.pathname);
  for (const name of [nameOf(url), "/today", "/today?show=all", "/today?show=mine"]) {
    const page = await pages.match(name);
    if (page) return page;
  }
  return undefined;
}

function nameOf(url) {
  if (isHowTo(url)) return url.pathname + url.search;
  const show = url.searchParams.get("show");
  return show === "all" || show === "mine" ? "/today?show=" + show : "/today";
}

async function offlinePage() {
  return (await caches.match("/offline")) ?? Response.error();
}

// ---- notices

self.addEventListener("push", (event) => event.waitUntil(showNotice(event.data)));

async function showNotice(data) {
  let notice = {};
  try {
    notice = data.json();
  } catch {
    // Something must be shown, or the browser shows words of its own.
  }
  await self.registration.showNotification(notice.title ?? "Warmshelf", {
    body: notice.body ?? "",
    tag: notice.path,
    icon: SHELL.find((address) => address.endsWith("warmshelf-192.png")),
    data: { path: ownPath(notice.path) },
  });
}

/** Only a page of ours is opened. */
function ownPath(path) {
  const url = new URL(path ?? "/", self.location.origin);
  return url.origin === self.location.origin ? url.pathname + url.search : "/";
}

self.addEventListener("notificationclick", (event) => {
  event.notification.close();
  event.waitUntil(openPage(event.notification.data?.path ?? "/"));
});

async function openPage(path) {
  const open = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  const there = open.find((each) => each.url === self.location.origin + path);
  if (there) return there.focus();
  return self.clients.openWindow(path);
}

self.addEventListener("pushsubscriptionchange", (event) => event.waitUntil(tellNewAddress(event)));

async function tellNewAddress(event) {
  const key = event.oldSubscription?.options.applicationServerKey;
  const made = event.newSubscription
    ?? (key && (await self.registration.pushManager.subscribe({ userVisibleOnly: true, applicationServerKey: key })));
  if (!made) return;
  const { endpoint, keys } = made.toJSON();
  await fetch("/reminders/devices/moved", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ endpoint, p256dh: keys.p256dh, auth: keys.auth }),
  });
}
