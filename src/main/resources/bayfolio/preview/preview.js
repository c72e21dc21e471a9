// Shows what is wrong, and where each thing is written; loads the page again when it is another one.
(() => {
  const element = (name, text, kind) => Object.assign(document.createElement(name), { textContent: text, className: kind || "" });
  const board = element("section", "", "preview-board");
  board.setAttribute("aria-label", "Preview");
  let known = 0;

  function show(state) {
    const errors = state.findings.filter((one) => one.severity === "error").length;
    const more = document.createElement("details");
    more.open = errors > 0 || Boolean(state.failed);
    const summary = element(
      "summary",
      state.failed ? "It could not be read" : state.findings.length === 0 ? "Nothing is wrong" : `${errors} errors, ${state.findings.length - errors} others`,
    );
    more.append(summary);
    if (state.stays) {
      more.append(element("p", "This is the last page that was good.", "preview-stays"));
    }
    if (state.failed) {
      more.append(element("p", state.failed));
    }
    const list = document.createElement("ul");
    state.findings.slice(0, 50).forEach((one) => {
      const item = element("li", "", `preview-${one.severity}`);
      item.append(element("code", one.at), element("p", `${one.severity}: ${one.message}`), element("p", one.mend));
      list.append(item);
    });
    more.append(list);
    board.replaceChildren(more);
    document.body.append(board);
    document.querySelectorAll(".preview-at").forEach((one) => one.remove());
    const told = new Set();
    state.written.forEach(({ anchor, at }) => {
      const place = anchor ? document.getElementById(anchor) : document.querySelector("h1");
      if (place && !told.has(anchor)) {
        told.add(anchor);
        const head = place.matches("section") ? place.querySelector("h2, h3") || place : place;
        head.append(element("code", at, "preview-at"));
      }
    });
  }

  async function follow() {
    for (;;) {
      try {
        const answer = await fetch(`/.preview/state?known=${known}&page=${encodeURIComponent(location.pathname)}`);
        const state = await answer.json();
        if (known && state.draft !== known && !state.stays) {
          location.reload();
          return;
        }
        const same = state.draft === known;
        known = state.draft;
        show(state);
        if (same) {
          await new Promise((later) => setTimeout(later, 300));
        }
      } catch (gone) {
        await new Promise((later) => setTimeout(later, 500));
      }
    }
  }

  follow();
})();
