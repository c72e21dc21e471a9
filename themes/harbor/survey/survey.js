// What is found at a coach: kept on this phone, given out as one file, sent nowhere.
(() => {
  "use strict";
  const LONGEST = 1600;
  const PATIENCE = 3000;
  const survey = JSON.parse(document.getElementById("survey").textContent);
  const { words } = survey;
  const own = (name) => `${survey.coach} ${survey.edition} ${name}`;
  const facts = new Map();
  const compared = new Map();
  let pictures = [];
  let by = "";
  let database = null;

  const now = () => new Date().toISOString();

  /* Nothing where the phone keeps nothing for such a page, or does not say in time. */
  function opened() {
    return new Promise((resolve) => {
      setTimeout(() => resolve(null), PATIENCE);
      try {
        const request = indexedDB.open("bayfolio-survey", 1);
        request.onupgradeneeded = () => request.result.createObjectStore("kept");
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => resolve(null);
        request.onblocked = () => resolve(null);
      } catch (refused) {
        resolve(null);
      }
    });
  }

  function keep(name, value) {
    if (database) {
      try {
        const writing = database.transaction("kept", "readwrite");
        writing.objectStore("kept").put(value, own(name));
        writing.oncomplete = () => document.body.setAttribute("data-kept", name);
        writing.onerror = lost;
        writing.onabort = lost;
      } catch (closed) {
        lost();
      }
    }
  }

  function lost() {
    document.getElementById("kept").textContent = words.unkept;
  }

  function kept(name) {
    return new Promise((resolve) => {
      if (!database) {
        resolve(undefined);
        return;
      }
      const reading = database.transaction("kept").objectStore("kept").get(own(name));
      reading.onsuccess = () => resolve(reading.result);
      reading.onerror = () => resolve(undefined);
    });
  }

  /* What was kept of earlier surveys of this coach has been handed in. */
  function forgetOlder() {
    if (!database) {
      return;
    }
    const store = database.transaction("kept", "readwrite").objectStore("kept");
    store.getAllKeys().onsuccess = (event) => {
      event.target.result
        .filter((key) => key.startsWith(`${survey.coach} `) && !key.startsWith(own("")))
        .forEach((key) => store.delete(key));
    };
  }

  function told() {
    const done = [...facts.keys()].length;
    document.getElementById("progress").textContent = words.progress.replace("{done}", done);
  }

  function show(ask) {
    const fact = facts.get(ask.dataset.path);
    ask.classList.toggle("answered", fact !== undefined);
  }

  function asked(ask) {
    const path = ask.dataset.path;
    const answer = ask.querySelector(".answer");
    const still = ask.querySelector(".still");
    const was = path in survey.was ? survey.was[path] : null;
    const entered = (value) => {
      if (value === null) {
        facts.delete(path);
      } else {
        facts.set(path, { path, was, now: value, when: now() });
      }
      keep("facts", [...facts.values()]);
      show(ask);
      told();
    };
    const typed = () => {
      if (still) {
        still.checked = false;
      }
      entered(answer.value.trim() === "" ? null : answer.value);
    };
    answer.addEventListener("input", typed);
    answer.addEventListener("change", typed);
    if (still) {
      still.addEventListener("change", () => {
        if (still.checked) {
          answer.value = "";
        }
        entered(still.checked ? was : null);
      });
    }
    const before = facts.get(path);
    if (before) {
      if (still && before.now === was) {
        still.checked = true;
      } else {
        answer.value = before.now;
      }
    }
    show(ask);
  }

  function element(name, attributes, text) {
    const made = document.createElement(name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    if (text) {
      made.textContent = text;
    }
    return made;
  }

  async function downscaled(file) {
    const picture = await createImageBitmap(file);
    const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
    const canvas = element("canvas", {
      width: Math.round(picture.width * scale),
      height: Math.round(picture.height * scale),
    });
    canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
    return canvas.toDataURL("image/jpeg", 0.8);
  }

  function showPictures(stop) {
    const list = stop.querySelector(".taken");
    list.replaceChildren();
    pictures
      .filter((picture) => picture.of === stop.dataset.path)
      .forEach((picture) => {
        const id = `shows-${pictures.indexOf(picture)}`;
        const item = element("li", {});
        const field = element("input", { id, type: "text", autocomplete: "off" });
        field.value = picture.shows;
        field.addEventListener("input", () => {
          picture.shows = field.value;
          keep("pictures", pictures);
        });
        const remove = element("button", { type: "button" }, words.remove);
        remove.addEventListener("click", () => {
          pictures = pictures.filter((each) => each !== picture);
          keep("pictures", pictures);
          document.querySelectorAll(".stop").forEach(showPictures);
          stop.querySelector(".picture").focus();
        });
        item.append(
          element("img", { src: picture.data, alt: words.picture }),
          element("label", { for: id }, words.shows),
          field,
          remove,
        );
        list.append(item);
      });
  }

  function stopped(stop) {
    const path = stop.dataset.path;
    const all = stop.querySelector(".compared");
    all.checked = compared.has(path);
    all.addEventListener("change", () => {
      if (all.checked) {
        compared.set(path, { path, when: now() });
      } else {
        compared.delete(path);
      }
      keep("compared", [...compared.values()]);
    });
    const picture = stop.querySelector(".picture");
    picture.addEventListener("change", async () => {
      const [file] = picture.files;
      picture.value = "";
      try {
        pictures.push({ of: path, data: await downscaled(file), when: now(), shows: "" });
        keep("pictures", pictures);
        showPictures(stop);
      } catch (unread) {
        stop.querySelector(".taken").append(element("li", { role: "alert" }, words.unread));
      }
    });
    showPictures(stop);
  }

  function file() {
    return JSON.stringify(
      {
        form: survey.form,
        coach: survey.coach,
        edition: survey.edition,
        by,
        facts: [...facts.values()],
        compared: [...compared.values()],
        pictures: pictures.map(({ of, when, shows, data }) => ({
          of,
          when,
          shows,
          jpeg: data.slice(data.indexOf(",") + 1),
        })),
      },
      null,
      1,
    );
  }

  function save() {
    const url = URL.createObjectURL(new Blob([file()], { type: "application/json" }));
    const link = element("a", { href: url, download: `survey-${survey.coach}-${now().slice(0, 10)}.json` });
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(url), 60000);
  }

  async function begin() {
    database = await opened();
    document.getElementById("kept").textContent = database ? words.kept : words.unkept;
    ((await kept("facts")) || []).forEach((fact) => facts.set(fact.path, fact));
    ((await kept("compared")) || []).forEach((each) => compared.set(each.path, each));
    pictures = (await kept("pictures")) || [];
    by = (await kept("by")) || "";
    forgetOlder();
    const role = document.getElementById("by");
    role.value = by;
    role.addEventListener("input", () => {
      by = role.value.trim();
      keep("by", by);
    });
    document.querySelectorAll("#asked .ask").forEach(asked);
    document.querySelectorAll(".stop").forEach(stopped);
    document.getElementById("asked").addEventListener("submit", (event) => event.preventDefault());
    document.getElementById("save").addEventListener("click", save);
    told();
    document.body.setAttribute("data-ready", "");
  }

  begin();
})();
