/*
 * A night on the house batteries.
 * figures: capacity in ampere-hours, which come out in so many hours, over, with Peukert's exponent; usable, a share of 1;
 * night in hours; idle, amperes that the inverter takes for itself; holds, the share of the capacity that is there at each
 * temperature; loads, each {id, amps, inverted, alwaysOn}, with amperes out of the batteries; words, as said() takes them.
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

  function aNight(figures, choice) {
    var words = window.bayfolio.said(figures.words);
    var loads = chosen(figures, choice);
    var runs = together(loads.concat([idling(figures, loads)]));
    if (!runs.length) {
      return { answer: words.say("result.nothing"), rows: [] };
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
    var left = words.amount(100 * Math.max(0, 1 - used), 0, "less", "percent");
    var limit = words.amount(100 * (1 - figures.usable), 0, "more", "percent");
    return {
      answer: words.say(until === null ? "result.lasts" : "result.ends", { left: left, limit: limit }),
      rows: [
        [words.say("result.row.taken"), words.amount(drawn, Math.abs(drawn) < 10 ? 1 : 0, "more", "ampere-hour")],
        [words.say("result.row.left"), left],
        [
          words.say("result.row.limit"),
          until === null ? words.say("result.never") : words.amount(until, 1, "less", "hour")
        ]
      ]
    };
  }

  window.bayfolio = window.bayfolio || {};
  window.bayfolio["a-night"] = aNight;
})();
