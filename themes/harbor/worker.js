// What is kept is of one edition, and never mixed. The program fills in the two lines below, for each coach.
const EDITION = "@edition@";
const FILES = ["@files@"];

// When it was kept, beside the files; no address of the site.
const DAY = "kept-on";

const OWN = `bayfolio ${self.registration.scope} `;
const KEPT = OWN + EDITION;

self.addEventListener("install", (event) => {
  const wanted = FILES.map((file) => new Request(file, { cache: "reload" }));
  event.waitUntil(caches.open(KEPT).then((cache) => cache.addAll(wanted).then(() => cache.put(DAY, new Response(String(Date.now()))))));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name.startsWith(OWN) && name !== KEPT).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

// Only a reader's tap brings the next edition.
self.addEventListener("message", (event) => {
  if (event.data === "take-over") {
    self.skipWaiting();
  } else if (event.data === "kept") {
    event.waitUntil(kept().then((all) => event.ports[0].postMessage(all)));
  }
});

// How many bytes there are, and since when; nothing while one file is missing.
async function kept() {
  const cache = await caches.open(KEPT);
  let size = 0;
  for (const file of FILES) {
    const found = await cache.match(file);
    if (!found) {
      return { size: 0 };
    }
    size += (await found.blob()).size;
  }
  const day = await cache.match(DAY);
  return { size, on: day ? Number(await day.text()) : 0 };
}

self.addEventListener("fetch", (event) => {
  if (event.request.method === "GET" && new URL(event.request.url).origin === self.location.origin) {
    event.respondWith(answer(event.request));
  }
});

async function answer(request) {
  const cache = await caches.open(KEPT);
  const url = new URL(request.url);
  const file = url.pathname.endsWith("/") ? url.pathname + "index.html" : request;
  // Mail programs add words to an address.
  const found = await cache.match(file, { ignoreSearch: true });
  if (found) {
    return found;
  }
  try {
    return await fetch(request);
  } catch (gone) {
    // Of a photo one size is kept.
    const photo = /^(.*\/photos\/.+?)(-\d+)?\.jpg$/.exec(url.pathname);
    for (const size of photo ? ["-640", "", "-320"] : []) {
      const kept = await cache.match(`${photo[1]}${size}.jpg`);
      if (kept) {
        return kept;
      }
    }
    const help = request.mode === "navigate" && ((await cache.match("stage/emergency.html")) || (await cache.match("index.html")));
    if (help) {
      return help;
    }
    throw gone;
  }
}
