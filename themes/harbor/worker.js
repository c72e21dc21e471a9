// What is kept is of one edition, and never mixed. The program fills in the two lines below, for each coach.
const EDITION = "@edition@";
const PICTURES = ["@files@"];

// All texts in one file: one question to a slow network, not hundreds.
const TEXTS = "kept.json";

// How much was kept, and when, beside the files; no address of the site.
const NOTE = "kept-on";

const OWN = `bayfolio ${self.registration.scope} `;
const KEPT = OWN + EDITION;

const TYPES = {
  html: "text/html; charset=utf-8",
  css: "text/css; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  svg: "image/svg+xml",
  json: "application/json",
  txt: "text/plain; charset=utf-8",
};

async function asked(file) {
  const answer = await fetch(new Request(file, { cache: "reload" }));
  if (!answer.ok) {
    throw new Error(`${file}: ${answer.status}`);
  }
  return answer;
}

async function keep() {
  // The last edition but one may be this one again, or only this script another one.
  if ((await kept()).size > 0) {
    return;
  }
  // A host may just be taking over the next edition: the texts, which tell theirs, come last.
  const pictures = await Promise.all(PICTURES.map((file) => asked(file).then((answer) => answer.blob())));
  const texts = await asked(TEXTS).then((answer) => answer.json());
  if (texts.edition !== EDITION) {
    throw new Error(`the texts are of edition ${texts.edition}`);
  }
  const files = Object.entries(texts.files).map(([file, text]) => [file, new Blob([text], { type: TYPES[file.split(".").pop()] })]);
  PICTURES.forEach((file, at) => files.push([file, pictures[at]]));
  const cache = await caches.open(KEPT);
  await Promise.all(files.map(([file, blob]) => cache.put(file, new Response(blob, { headers: { "Content-Type": blob.type } }))));
  const size = files.reduce((sum, [, blob]) => sum + blob.size, 0);
  await cache.put(NOTE, new Response(JSON.stringify({ on: Date.now(), size, files: files.length })));
}

// A phone that is full keeps nothing of it, and what it kept before stays.
self.addEventListener("install", (event) =>
  event.waitUntil(
    keep().catch(async (refused) => {
      await caches.delete(KEPT);
      throw refused;
    }),
  ),
);

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
  const note = await cache.match(NOTE);
  const { on, size, files } = note ? await note.json() : {};
  return (await cache.keys()).length === files + 1 ? { size, on } : { size: 0 };
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
    // Of a photo one size is kept; its own name may end in a number.
    const photo = /^(.*\/photos\/.+)\.jpg$/.exec(url.pathname);
    for (const name of photo ? [photo[1], photo[1].replace(/-\d+$/, "")] : []) {
      for (const size of ["-640", "", "-320"]) {
        const there = await cache.match(`${name}${size}.jpg`);
        if (there) {
          return there;
        }
      }
    }
    const help = request.mode === "navigate" && ((await cache.match("stage/emergency.html")) || (await cache.match("index.html")));
    if (help) {
      return help;
    }
    throw gone;
  }
}
