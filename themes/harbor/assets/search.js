// Finds entries of the A to Z by any of their names, by words of their texts, and in spite of a slip of the finger: those of
// this coach, or, where the page says among which, those of all coaches, each of which is loaded when it is first asked for.
(() => {
  const place = document.getElementById("search");
  const words = window.bayfolio.words.search;
  const among = place.dataset.among;
  const MOST = among ? 24 : 6;

  const coaches = among
    ? [...document.querySelectorAll(among)].map((link) => ({
        folder: link.getAttribute("href").replace(/[^/]*$/, ""),
        name: link.querySelector("b:not(.number)").textContent,
      }))
    : [{ folder: "", name: "" }];

  function element(name, attributes, ...inside) {
    const made = document.createElement(name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    made.append(...inside);
    return made;
  }

  const plain = (term) => term.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

  const index = new MiniSearch({
    fields: ["title", "also", "note", "text", "coach"],
    idField: "href",
    processTerm: plain,
    searchOptions: {
      boost: { title: 6, also: 6, note: 2 },
      prefix: (term) => term.length > 1,
      fuzzy: (term) => (term.length < 4 ? 0 : 1),
      weights: { fuzzy: 0.25, prefix: 0.5 },
    },
  });
  const entries = new Map();

  const field = element("input", { id: "asked", type: "search", autocomplete: "off", autocapitalize: "off", spellcheck: "false" });
  const label = element("label", { for: "asked" }, among ? words["asked-of-all"] : words.asked);
  const choice = element(
    "select",
    { id: "of" },
    element("option", { value: "" }, words.all),
    ...coaches.map((coach) => element("option", { value: coach.folder }, coach.name)),
  );
  const status = element("p", { role: "status" });
  const results = element("div", {});
  place.append(label, field);
  if (among) {
    place.append(element("label", { for: "of" }, words.coach), choice);
  }
  place.append(status, results);

  const asked = () => field.value.trim();
  const looked = () => coaches.filter((coach) => choice.value === "" || coach.folder === choice.value);

  /* All words at once, or else as many of them as there are, or else with one slip more. */
  function found() {
    const filter = (hit) => hit.id.startsWith(choice.value);
    const ways = [{ combineWith: "AND" }, {}, { fuzzy: (term) => (term.length < 5 ? 0 : 2) }];
    return ways.reduce((hits, way) => (hits.length > 0 ? hits : index.search(asked(), { ...way, filter })), []);
  }

  function entry(one) {
    const link = element("a", { href: one.href }, element("b", {}, one.coach === "" ? one.title : `${one.coach}: ${one.title}`));
    if (one.note) {
      link.append(" ", element("span", {}, one.note));
    }
    return element("li", {}, link);
  }

  function said(count, shown) {
    const loading = looked().some((coach) => !coach.there && !coach.lost);
    const lost = looked().filter((coach) => coach.lost).map((coach) => coach.name);
    return [
      count > 0 ? `${words.found}: ${count}.` : !loading && (among ? words["none-of-all"] : words.none),
      among && count > shown && words.more,
      among && loading && words.loading,
      lost.length > 0 && `${words.lost}: ${lost.join(", ")}.`,
    ].filter(Boolean).join(" ");
  }

  function show() {
    const best = asked() === "" ? [] : found().map((hit) => entries.get(hit.id));
    const groups = [...new Set(best.map((one) => one.group))].map((group) => [
      group,
      best.filter((one) => one.group === group).slice(0, MOST),
    ]);
    document.body.classList.toggle("searching", asked() !== "");
    results.replaceChildren(
      ...groups.map(([group, some]) =>
        element("section", {}, element("h2", {}, words[group]), element("ul", { class: "found" }, ...some.map(entry))),
      ),
    );
    const told = asked() === "" ? "" : said(best.length, groups.reduce((sum, [, some]) => sum + some.length, 0));
    // What is said once is not said again with each list that comes.
    if (status.textContent !== told) {
      status.textContent = told;
    }
  }

  function load(coach) {
    coach.list ??= fetch(`${coach.folder}search.json`)
      .then((answer) => answer.json())
      .then((list) => {
        const own = list.map((one) => ({ ...one, href: coach.folder + one.href, coach: coach.name }));
        own.forEach((one) => entries.set(one.href, one));
        // In pieces, so that whoever goes on typing is heard.
        return index.addAllAsync(own, { chunkSize: 100 });
      })
      .then(() => (coach.there = true))
      .catch(() => (coach.lost = true))
      .then(() => {
        if (coach.lost && !among) {
          // Without the list the letters below are there.
          place.remove();
        } else {
          // Lists that come one behind the other are shown together.
          coming ??= setTimeout(come, among ? 200 : 0);
        }
      });
  }

  let coming;
  function come() {
    coming = undefined;
    // Who has gone on to what was found does not lose it.
    if (!results.contains(document.activeElement)) {
      show();
    }
    ready();
  }

  function ready() {
    place.toggleAttribute("data-ready", looked().every((coach) => coach.there || coach.lost));
  }

  function look() {
    // Who comes back from what he found finds it again.
    history.replaceState({ asked: asked(), of: choice.value }, "");
    if (asked() !== "" || !among) {
      looked().forEach(load);
    }
    show();
    ready();
  }

  field.addEventListener("input", look);
  choice.addEventListener("change", look);
  field.value = field.value || history.state?.asked || "";
  choice.value = history.state?.of || "";
  look();
})();
