/*
 * How long the water lasts.
 * data: ways, each {shower, fresh, gray, toilet}: liters of one shower, and liters a person and day without showers;
 * tanks, each {use, name, verb, end, usable}: use is "fresh", "gray" or "toilet", usable is in liters.
 * choice: people; living, its place in the list of ways; showers a day for each person, left out without a shower.
 */
(function () {
  "use strict";

  function days(value) {
    var shown = window.bayfolio.shown(value, Math.abs(value) < 10 ? 1 : 0, "less");
    return shown + (shown === "1.0" ? " day" : " days");
  }

  function water(data, choice) {
    var way = data.ways[choice.living];
    var showered = way.shower * (choice.showers || 0);
    var lasting = data.tanks.map(function (tank) {
      var each = way[tank.use] + (tank.use === "toilet" ? 0 : showered);
      return { name: tank.name, verb: tank.verb, end: tank.end, days: tank.usable / (choice.people * each) };
    });
    var first = lasting.reduce(function (least, tank) {
      return tank.days < least.days ? tank : least;
    });
    return {
      answer: first.name + " " + first.verb + " " + first.end + " first, after " + days(first.days) + ".",
      rows: lasting.map(function (tank) {
        return [tank.name + " " + tank.end, days(tank.days)];
      })
    };
  }

  window.bayfolio = window.bayfolio || {};
  window.bayfolio["water-days"] = water;
})();
