/* How figures are shown: rounded to the side on which nobody is hurt, as in the tables of the page. */
(function () {
  "use strict";

  /* A millionth of the last digit shown is a slip of the arithmetic, not a reason to go to the next one. */
  var SLIP = 1e-6;

  function steps(exact, toward) {
    if (toward === "less") {
      return Math.floor(exact + SLIP);
    }
    return toward === "more" ? Math.ceil(exact - SLIP) : Math.floor(exact + 0.5 + SLIP);
  }

  /* With a fixed number of decimals, thousands parted by commas: shown(1234.5, 1, "less") is "1,234.5". */
  function shown(value, decimals, toward) {
    if (!Number.isFinite(value)) {
      throw new RangeError("no figure: " + value);
    }
    var factor = Math.pow(10, decimals);
    var whole = steps(value * factor, toward);
    var parts = (Math.abs(whole) / factor).toFixed(decimals).split(".");
    parts[0] = parts[0].replace(/\B(?=(\d{3})+(?!\d))/g, ",");
    return (whole < 0 ? "-" : "") + parts.join(".");
  }

  window.bayfolio = window.bayfolio || {};
  window.bayfolio.shown = shown;
})();
