// Finds entries of the A to Z by any of their names, by words of their texts, and in spite of a slip of the finger.
(() => {
  const place = document.getElementById("search");
  const words = window.bayfolio.words.search;
  const GROUPS = ["trouble", "do", "where", "number", "word"];
  const MOST = 6;

  function element(name, attributes, ...inside) {
    const made = document.createElement(name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    made.append(...inside);
    return made;
  }

  const plain = (term) => term.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

  const options = {
    fields: ["title", "also", "note", "text"],
    idField: "href",
    processTerm: plain,
    searchOptions: {
      boost: { title: 6, also: 6, note: 2 },
      prefix: (term) => term.length > 1,
      fuzzy: (term) => (term.length < 4 ? 0 : 1),
      weights: { fuzzy: 0.25, prefix: 0.5 },
    },
  };

  /* All words at once, or else as many of them as there are, or else with one slip more. */
  function found(index, asked) {
    const ways = [{ combineWith: "AND" }, {}, { fuzzy: (term) => (term.length < 5 ? 0 : 2) }];
    return ways.reduce((hits, way) => (hits.length > 0 ? hits : index.search(asked, way)), []);
  }

  const field = element("input", { id: "asked", type: "search", autocomplete: "off", autocapitalize: "off", spellcheck: "false" });
  const label = element("label", { for: "asked" }, words.asked);
  const results = element("div", { role: "status" });
  place.append(label, field, results);

  function entry(one) {
    const link = element("a", { href: one.href }, element("b", {}, one.title));
    if (one.note) {
      link.append(" ", element("span", {}, one.note));
    }
    return element("li", {}, link);
  }

  function show(entries, hits, asked) {
    document.body.classList.toggle("searching", asked !== "");
    const best = hits.map((hit) => entries.get(hit.id));
    const groups = [...new Set(best.map((one) => one.group))];
    results.replaceChildren(
      ...groups.map((group) =>
        element(
          "section",
          {},
          element("h2", {}, words[group]),
          element("ul", { class: "found" }, ...best.filter((one) => one.group === group).slice(0, MOST).map(entry)),
        ),
      ),
    );
    if (asked !== "" && hits.length === 0) {
      results.append(element("p", {}, words.none));
    }
  }

  fetch("search.json")
    .then((answer) => answer.json())
    .then((list) => {
      const index = new MiniSearch(options);
      index.addAll(list);
      const entries = new Map(list.map((one) => [one.href, one]));
      const look = () => {
        const asked = field.value.trim();
        // Who comes back from what he found finds it again.
        history.replaceState({ asked }, "");
        show(entries, asked === "" ? [] : found(index, asked), asked);
      };
      field.addEventListener("input", look);
      field.value = field.value || history.state?.asked || "";
      look();
      place.dataset.ready = "";
    })
    // Without the list the letters below are there.
    .catch(() => place.remove());
})();
