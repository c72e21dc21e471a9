// Keeps the handbook of this coach on the phone, and says so only when all of it is there.
(() => {
  const script = document.currentScript;
  const line = document.getElementById("saved");
  const words = window.bayfolio.words.offline;
  if (!line) {
    return;
  }

  // A private window, the window of a mail program, or a phone that is full: the pages are read as they come.
  function unsaved() {
    if (line.hidden) {
      line.textContent = words.none;
      line.hidden = false;
    }
  }

  if (!("serviceWorker" in navigator)) {
    unsaved();
    return;
  }
  const phone = navigator.serviceWorker;
  // What is older than that may be of another edition of the coach.
  const LONG = 30 * 24 * 60 * 60 * 1000;

  function kept(worker) {
    const channel = new MessageChannel();
    channel.port1.onmessage = (event) => {
      const { size, on } = event.data;
      if (size > 0 && !line.querySelector("button")) {
        const day = on ? ` · ${new Date(on).toLocaleDateString(document.documentElement.lang)}` : "";
        const told = navigator.onLine ? words.saved : words.copy;
        line.textContent = `${told} · ${Math.ceil(size / 1000)}\u00a0kB${day}`;
        if (on && Date.now() - on > LONG) {
          line.append(document.createElement("br"), words.old);
        }
        line.hidden = false;
      } else if (!(size > 0)) {
        unsaved();
      }
    };
    worker.postMessage("kept", [channel.port2]);
  }

  function offer(worker) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = words.update;
    button.onclick = () => {
      phone.addEventListener("controllerchange", () => location.reload());
      worker.postMessage("take-over");
    };
    line.replaceChildren(button);
    line.hidden = false;
  }

  phone
    .register(script.dataset.worker)
    .then((registration) => {
      const waits = () => registration.waiting && phone.controller && offer(registration.waiting);
      const follow = (worker) => worker.addEventListener("statechange", () => (worker.state === "redundant" && !registration.active ? unsaved() : waits()));
      waits();
      registration.addEventListener("updatefound", () => follow(registration.installing));
      if (registration.installing) {
        follow(registration.installing);
      }
      return phone.ready;
    })
    .then((registration) => kept(registration.active))
    .catch(unsaved);
})();
