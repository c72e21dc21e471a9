// Lists that are ticked off, and steps that are shown one at a time. The phone keeps both for this page, and tells nobody.
(() => {
  const HALF_A_DAY = 12 * 60 * 60 * 1000;
  const own = (path) => `bayfolio ${path}`;
  const words = window.bayfolio.words.pace;

  function read(path) {
    try {
      return JSON.parse(localStorage.getItem(own(path))) || {};
    } catch (refused) {
      return {};
    }
  }

  /* Whether it will be there tomorrow. */
  function write(path, state) {
    try {
      localStorage.setItem(own(path), JSON.stringify(state));
      return true;
    } catch (full) {
      return false;
    }
  }

  const state = read(location.pathname);
  const lost = element("p", { class: "note", hidden: "" }, words.lost);

  function keep(change) {
    Object.assign(state, change, { on: Date.now() });
    lost.hidden = write(location.pathname, state);
  }

  function element(name, attributes, ...inside) {
    const made = document.createElement(name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    made.append(...inside);
    return made;
  }

  function button(text, act, more = {}) {
    const made = element("button", { type: "button", ...more }, text);
    made.addEventListener("click", act);
    return made;
  }

  const clock = (time) => new Date(time).toLocaleTimeString(document.documentElement.lang, { hour: "2-digit", minute: "2-digit" });

  /* ---- lists that are ticked off ---- */

  const lines = [...document.querySelectorAll(".steps.ticked > li, .page-now .links > ul > li")];

  function ticked() {
    const ticks = (state.ticks ||= {});
    const name = (line) => line.id || line.querySelector("a").getAttribute("href");
    const text = (line) => (line.querySelector("p, a") || line).textContent.trim();
    const count = element("p", { class: "count", role: "status" });
    const boxes = lines.map((line) => {
      const box = button("", () => {
        if (ticks[name(line)]) {
          delete ticks[name(line)];
        } else {
          ticks[name(line)] = Date.now();
        }
        keep({});
        show();
      }, { class: "box", "aria-label": `${words.tick}: ${text(line)}` });
      line.prepend(box);
      line.classList.add("boxed");
      return box;
    });

    function show() {
      lines.forEach((line, at) => {
        const time = ticks[name(line)];
        boxes[at].setAttribute("aria-pressed", time ? "true" : "false");
        boxes[at].textContent = time ? `✓ ${clock(time)}` : "";
        line.classList.toggle("done", Boolean(time));
      });
      count.textContent = `${lines.filter((line) => ticks[name(line)]).length} / ${lines.length} ${words.done}`;
    }

    async function share() {
      const list = lines.map((line) => `${ticks[name(line)] ? `[x] ${clock(ticks[name(line)])}` : "[ ]"} ${text(line)}`);
      const all = [document.title, new Date().toLocaleDateString(document.documentElement.lang), ...list].join("\n");
      try {
        await (navigator.share ? navigator.share({ text: all }) : navigator.clipboard.writeText(all));
        sharing.textContent = navigator.share ? words.share : words.copied;
      } catch (refused) {
        place.append(element("textarea", { readonly: "", rows: "8", "aria-label": words.share }, all));
      }
    }

    const sharing = button(words.share, share);
    const place = element("div", { class: "ticks" }, sharing, button(words.clear, () => {
      Object.keys(ticks).forEach((line) => delete ticks[line]);
      keep({});
      show();
    }), lost);
    document.getElementById("pace").append(count);
    lines[lines.length - 1].closest(".links,ol").after(place);
    /* What was gone through step by step is done. */
    document.querySelectorAll(".page-now .links > ul > li").forEach((line) => {
      const there = read(new URL(line.querySelector("a").href).pathname);
      if (there.finished && !ticks[name(line)]) {
        ticks[name(line)] = there.finished;
      }
    });
    show();
  }

  /* ---- one step at a time ---- */

  const steps = [...document.querySelectorAll("#steps .steps > li")];
  const body = document.body;

  function cards() {
    const way = element("span", {});
    const top = element("p", { class: "way" }, button(words.back, () => go(at - 1)), way, button(words.list, leave));
    const not = button(words.not, failed);
    const next = button(words.next, onward, { class: "go" });
    const foot = element("div", { class: "pace", role: "group", "aria-label": words.one }, not, next);
    const begin = button(words.one, () => go(0), { class: "begin" });
    let at = 0;

    document.getElementById("pace").prepend(begin);
    document.querySelector("main").prepend(top);
    body.append(foot);

    function mark(now) {
      document.querySelectorAll("#steps .now").forEach((one) => one.classList.remove("now"));
      document.querySelectorAll("#steps .asked, #steps .ask, #steps .branch").forEach((one) => {
        one.classList.remove("asked");
        if (one.matches(".ask, .branch")) {
          one.remove();
        }
      });
      if (now) {
        now.classList.add("now");
        now.parentElement.classList.add("now");
        now.parentElement.previousElementSibling?.classList.add("now");
      }
    }

    function go(to) {
      if (to < 0) {
        leave();
        return;
      }
      at = to;
      body.classList.add("cards");
      mark(steps[at]);
      way.textContent = `${words.step} ${at + 1} / ${steps.length}`;
      not.hidden = !(steps[at].querySelector(".answers") || document.querySelector("#if-not p"));
      next.textContent = at === steps.length - 1 ? words.last : words.next;
      steps[at].tabIndex = -1;
      steps[at].focus({ preventScroll: true });
      scrollTo(0, 0);
      keep({ at: steps[at].id, cards: true });
    }

    function leave() {
      body.classList.remove("cards");
      mark();
      keep({ cards: false });
      begin.focus();
    }

    function failed() {
      const answers = steps[at].querySelector(".answers");
      if (answers) {
        steps[at].classList.add("asked");
        answers.scrollIntoView({ block: "nearest" });
      } else if (!steps[at].querySelector(".branch")) {
        const branch = element("div", { class: "branch" });
        document.querySelectorAll("#if-not > *:not(h2)").forEach((one) => branch.append(one.cloneNode(true)));
        steps[at].append(branch);
        branch.scrollIntoView({ block: "nearest" });
      }
    }

    /* Where a slip costs something, nobody goes on before he has looked. */
    function onward() {
      const stop = [...steps[at].querySelectorAll(".handling .stop")].filter((one) => !one.closest(".answers"));
      if (stop.length > 0 && !steps[at].querySelector(".ask")) {
        const ask = element("div", { class: "ask", role: "alert" }, element("p", {}, words.stop));
        stop.forEach((one) => ask.append(element("p", {}, ...[...one.childNodes].map((part) => part.cloneNode(true)))));
        ask.append(button(words.so, failed), button(words.free, onward, { class: "go" }));
        steps[at].append(ask);
        ask.scrollIntoView({ block: "nearest" });
        return;
      }
      if (at < steps.length - 1) {
        go(at + 1);
        return;
      }
      leave();
      keep({ at: undefined, finished: Date.now() });
      const after = document.querySelector("#done-when, #safe-to-stop");
      after?.scrollIntoView();
    }

    /* Who goes on to the next part goes on in the same way. */
    document.querySelectorAll('#safe-to-stop a[href*="--"]').forEach((link) =>
      link.addEventListener("click", () => {
        if (state.finished) {
          write(new URL(link.href).pathname, { cards: true, on: Date.now() });
        }
      }),
    );

    const asked = steps.findIndex((step) => `#${step.id}` === location.hash);
    if (state.cards && Date.now() - state.on < HALF_A_DAY) {
      go(Math.max(0, asked >= 0 ? asked : steps.findIndex((step) => step.id === state.at)));
    }
  }

  if (lines.length > 0) {
    ticked();
  }
  if (steps.length > 1) {
    cards();
  }
})();
