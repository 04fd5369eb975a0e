// Keeps what the round needs, so that it opens without a signal.
const KEEP = "snowhum-1";
const SHELL = ["/round", "/snowhum.css", "/pictures.css", "/round.js", "/icon.svg", "/manifest.webmanifest"];
const PATIENCE_MS = 4000;

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(KEEP).then((kept) => kept.addAll(SHELL)).then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => {
  const old = caches.keys().then((names) => Promise.all(names.filter((n) => n !== KEEP).map((n) => caches.delete(n))));
  event.waitUntil(old.then(() => self.clients.claim()));
});

async function fresh(request) {
  const cut = new AbortController();
  const timer = setTimeout(() => cut.abort(), PATIENCE_MS);
  try {
    const answer = await fetch(request, { signal: cut.signal });
    if (answer.ok && !answer.redirected) {
      const kept = await caches.open(KEEP);
      await kept.put(request, answer.clone());
    }
    return answer;
  } finally {
    clearTimeout(timer);
  }
}

// What signing out took away is fetched anew.
async function refill() {
  const kept = await caches.open(KEEP);
  for (const path of SHELL) {
    if (!(await kept.match(path))) await fresh(path).catch(() => {});
  }
}

async function answer(request) {
  try {
    return await fresh(request);
  } catch (unreachable) {
    const kept = await caches.match(request, { ignoreSearch: request.mode === "navigate" });
    const round = request.mode === "navigate" ? await caches.match("/round") : undefined;
    return kept ?? round ?? Response.error();
  }
}

const NEVER_KEPT = ["/api", "/setup", "/sign-in", "/shared"];
// Pages kept in this browser are the keeper's alone.
const LEAVING = ["/sign-out", "/settings/sign-out-everywhere"];

self.addEventListener("fetch", (event) => {
  const request = event.request;
  const url = new URL(request.url);
  if (request.method === "POST" && LEAVING.includes(url.pathname)) event.waitUntil(caches.delete(KEEP));
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (NEVER_KEPT.some((path) => url.pathname.startsWith(path))) return;
  const answered = answer(request);
  event.respondWith(answered);
  if (request.mode === "navigate") event.waitUntil(answered.then((page) => page.ok && !page.redirected && refill()));
});
