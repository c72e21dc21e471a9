/*
 * How long the water lasts.
 * data: words, as said() takes them; ways, each {shower, fresh, gray, toilet}: liters of one shower, and liters a person and day without showers;
 * tanks, each {use, name, count, end, usable}: use is "fresh", "gray" or "toilet", usable is in liters.
 * choice: people; living, its place in the list of ways; showers a day for each person, left out without a shower.
 */
(function () {
  "use strict";

  function water(data, choice) {
    var words = window.bayfolio.said(data.words);

    function days(value) {
      return words.amount(value, Math.abs(value) < 10 ? 1 : 0, "less", "day");
    }

    var way = data.ways[choice.living];
    var showered = way.shower * (choice.showers || 0);
    var lasting = data.tanks.map(function (tank) {
      var each = way[tank.use] + (tank.use === "toilet" ? 0 : showered);
      return { name: tank.name, count: tank.count, end: tank.end, days: tank.usable / (choice.people * each) };
    });
    var first = lasting.reduce(function (least, tank) {
      return tank.days < least.days ? tank : least;
    });
    return {
      answer: words.say("result", { tanks: first.name, count: first.count, end: first.end, days: days(first.days) }),
      rows: lasting.map(function (tank) {
        return [words.say("what", { tanks: tank.name, end: tank.end }), days(tank.days)];
      })
    };
  }

  window.bayfolio = window.bayfolio || {};
  window.bayfolio["water-days"] = water;
})();
