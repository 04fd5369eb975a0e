// Keeps what the round needs, so that it opens without a signal.
const KEEP = "snowhum-2";
const SHELL = ["/round", "/snowhum.css", "/pictures.css", "/round.js", "/verdict.js", "/icon.svg", "/manifest.webmanifest"];
// How long the server is waited for where a kept copy can stand in; where none can, as long as it takes.
const ROUND_MS = 4000;
const PAGE_MS = 20000;

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(KEEP).then((kept) => kept.addAll(SHELL)).then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => {
  const old = caches.keys().then((names) => Promise.all(names.filter((n) => n !== KEEP).map((n) => caches.delete(n))));
  event.waitUntil(old.then(() => self.clients.claim()));
});

async function fresh(request, patience) {
  const cut = new AbortController();
  const timer = patience && setTimeout(() => cut.abort(), patience);
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
    if (!(await kept.match(path, { ignoreVary: true }))) await fresh(path, PAGE_MS).catch(() => {});
  }
}

// A slow server is not one that is out of reach: a page that is being reckoned is waited for, never taken for the round.
async function answer(request) {
  const isPage = request.mode === "navigate";
  const kept = await caches.match(request, { ignoreSearch: isPage, ignoreVary: true });
  const isRound = SHELL.includes(new URL(request.url).pathname);
  try {
    return await fresh(request, kept && (isRound ? ROUND_MS : PAGE_MS));
  } catch (unreachable) {
    const round = isPage ? await caches.match("/round", { ignoreVary: true }) : undefined;
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
