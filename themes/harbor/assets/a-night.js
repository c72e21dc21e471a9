/*
 * A night on the house batteries.
 * figures: capacity in ampere-hours, which come out in so many hours, over, with Peukert's exponent; usable, a share of 1;
 * night in hours; idle, amperes that the inverter takes for itself; holds, the share of the capacity that is there at each
 * temperature; loads, each {id, amps, inverted, alwaysOn}, with amperes out of the batteries; words, a # for a figure.
 * choice: temperature, its place in the list; for the id of each load, its hours.
 */
(function () {
  "use strict";

  /* Never more than the rated capacity, however weak the current. */
  function lasts(capacity, figures, amps) {
    var ratio = capacity / (amps * figures.over);
    return ratio >= 1 ? capacity / amps : figures.over * Math.pow(ratio, figures.exponent);
  }

  function chosen(figures, choice) {
    return figures.loads.map(function (load) {
      return {
        amps: load.amps,
        hours: choice[load.id],
        inverted: load.inverted,
        alwaysOn: load.alwaysOn
      };
    });
  }

  /* The inverter stays on for what is always on, else as long as its loads run one after the other. */
  function idling(figures, loads) {
    var longest = 0;
    var sum = 0;
    var stays = false;
    loads.forEach(function (load) {
      if (load.inverted) {
        longest = Math.max(longest, load.hours);
        sum += load.hours;
        stays = stays || (load.alwaysOn && load.hours > 0);
      }
    });
    var most = Math.max(figures.night, longest);
    return { amps: figures.idle, hours: stays ? most : Math.min(most, sum) };
  }

  /* All begin at once and end one by one. */
  function together(loads) {
    var left = loads.slice().sort(function (a, b) { return a.hours - b.hours; });
    var begun = 0;
    return left.map(function (ended, at) {
      var amps = 0;
      left.slice(at).forEach(function (load) { amps += load.amps; });
      var run = { amps: amps, hours: ended.hours - begun };
      begun = ended.hours;
      return run;
    }).filter(function (run) { return run.amps > 0 && run.hours > 0; });
  }

  function fill(sentence, values) {
    return sentence.split("#").map(function (part, at) { return part + (at < values.length ? values[at] : ""); }).join("");
  }

  function aNight(figures, choice) {
    var shown = window.bayfolio.shown;
    var words = figures.words;
    var loads = chosen(figures, choice);
    var runs = together(loads.concat([idling(figures, loads)]));
    if (!runs.length) {
      return { answer: words.nothing, rows: [] };
    }
    var capacity = figures.capacity * figures.holds[choice.temperature];
    var drawn = 0;
    var used = 0;
    var begun = 0;
    var open = figures.usable;
    var until = null;
    runs.forEach(function (run) {
      var share = run.hours / lasts(capacity, figures, run.amps);
      if (until === null && share >= open - 1e-9) {
        until = begun + run.hours * Math.min(1, open / share);
      }
      open -= share;
      begun += run.hours;
      drawn += run.amps * run.hours;
      used += share;
    });
    var left = shown(100 * Math.max(0, 1 - used), 0, "less") + " %";
    var limit = shown(100 * (1 - figures.usable), 0, "more") + " %";
    var hours = until === null ? words.never : shown(until, 1, "less") + " h";
    return {
      answer: fill(until === null ? words.lasts : words.ends, [left, limit]),
      rows: [
        [words.taken, shown(drawn, Math.abs(drawn) < 10 ? 1 : 0, "more") + " Ah"],
        [words.left, left],
        [words.limit, hours]
      ]
    };
  }

  window.bayfolio = window.bayfolio || {};
  window.bayfolio["a-night"] = aNight;
})();
