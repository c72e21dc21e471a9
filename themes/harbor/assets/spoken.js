/* A short address is in capitals, and who was told it over the phone types it as it comes. */
(function () {
  "use strict";

  var base = document.currentScript.dataset.base;
  var path = window.location.pathname;
  var typed = path.slice(base.length);
  if (path.slice(0, base.length) === base && /^l\/[a-z0-9-]+\/[a-z0-9-]+\/?$/i.test(typed)) {
    var meant = typed.replace(/\/$/, "").toUpperCase() + "/";
    if (meant !== typed) {
      window.location.replace(base + meant);
    }
  }
}());
