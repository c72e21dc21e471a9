/*
 * What runs together.
 * figures: words, as said() takes them; loads, each {id, name, last}; ways, each {conductors: [{name, limit, always}], draws: one list for each load,
 * with what it draws on each conductor, empty where it has no power}.
 * choice: supply, its place in the list of ways; for the id of each load, true where it is on.
 */
(function () {
  "use strict";

  /* Currents are added up, so what is exactly at a limit may lie a hair above it. */
  var HAIR = 1e-6;

  function runsTogether(figures, choice) {
    var way = figures.ways[choice.supply];
    var words = window.bayfolio.said(figures.words);
    var on = figures.loads.map(function (load, at) {
      return { name: load.name, last: load.last, draws: way.draws[at], chosen: choice[load.id] === true };
    }).filter(function (load) {
      return load.chosen;
    });
    var dead = on.filter(function (load) {
      return load.draws.length === 0;
    });
    var running = on.filter(function (load) {
      return load.draws.length > 0;
    });
    var carried = way.conductors.map(function (conductor, at) {
      return running.reduce(function (sum, load) {
        return sum + load.draws[at];
      }, conductor.always);
    });
    var over = way.conductors.findIndex(function (conductor, at) {
      return carried[at] > conductor.limit + HAIR;
    });
    return {
      answer: answer(dead, running, over, words),
      rows: way.conductors.map(function (conductor, at) {
        return [conductor.name, words.say("result.row", {
          carried: words.amount(carried[at], 1, "more", "ampere"),
          limit: words.amount(conductor.limit, 1, "less", "ampere")
        })];
      }),
      filled: way.conductors.map(function (conductor, at) {
        return carried[at] / conductor.limit;
      })
    };
  }

  function answer(dead, running, over, words) {
    if (dead.length > 0) {
      return words.say("result.dead", { name: dead[0].name });
    }
    if (over < 0) {
      return words.say("result.fits");
    }
    /* The heaviest thing on what is loaded too far; air conditioners last. */
    var off = running.filter(function (load) {
      return load.draws[over] > 0;
    }).sort(function (one, other) {
      return one.last === other.last ? other.draws[over] - one.draws[over] : one.last ? 1 : -1;
    });
    return off.length > 0
      ? words.say("result.off", { name: off[0].name })
      : words.say("result.too-much");
  }

  window.bayfolio = window.bayfolio || {};
  window.bayfolio["runs-together"] = runsTogether;
})();
