// A chapter begins in the film on the page, and who comes from the page of a thing finds the film at its moment.
(() => {
  document.querySelectorAll(".film").forEach((figure) => {
    const video = figure.querySelector("video");
    const lost = figure.querySelector(".lost");
    const moments = [...figure.querySelectorAll(".moment")];
    const from = (moment) => Number(moment.dataset.from);

    /* Before the film has told how long it is, nobody can go to a moment of it. */
    function begin(moment, play) {
      const go = () => {
        video.currentTime = from(moment);
        if (play) {
          video.play().catch(() => {});
        }
      };
      if (video.readyState > 0) {
        go();
      } else {
        video.addEventListener("loadedmetadata", go, { once: true });
        video.preload = "metadata";
        video.load();
      }
    }

    moments.forEach((moment) =>
      moment.addEventListener("click", (event) => {
        event.preventDefault();
        history.replaceState(null, "", `#${moment.parentElement.id}`);
        video.scrollIntoView({ block: "nearest" });
        begin(moment, true);
      }),
    );

    video.addEventListener("timeupdate", () => {
      const time = video.currentTime + 0.05;
      moments.forEach((moment) => {
        const now = from(moment) <= time && time < Number(moment.dataset.to);
        moment.setAttribute("aria-current", now ? "true" : "false");
      });
    });

    // Without signal there is no film, or no more of it, and all that it shows stands on the pages.
    [figure.querySelector("source"), video].forEach((part) =>
      part.addEventListener("error", () => {
        lost.hidden = false;
      }),
    );
    video.addEventListener("playing", () => {
      lost.hidden = true;
    });

    const asked = moments.find((moment) => `#${moment.parentElement.id}` === location.hash);
    if (asked) {
      begin(asked, false);
      video.scrollIntoView({ block: "start" });
      asked.focus({ preventScroll: true });
    }
  });
})();
