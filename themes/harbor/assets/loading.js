/*
 * What is left to load.
 * data: words, as said() takes them; unit, perKilogram of that unit; frontSeats; hair, which is no excess, and noShare, under which a limit is not
 * reached; levels, shares of fresh water; limits, each {name, room, inFront, inHouse, water, cargo}: kilograms left with
 * nothing on board, the shares of a person in front and in the house, kilograms of full fresh tanks, share of cargo.
 * choice: people; each and cargo in the unit; fresh, its place in the list of levels, left out without a fresh tank.
 */
(function () {
  "use strict";

  function loading(data, choice) {
    var words = window.bayfolio.said(data.words);
    var front = Math.min(choice.people, data.frontSeats);
    var house = choice.people - front;
    var each = choice.each / data.perKilogram;
    var cargo = choice.cargo / data.perKilogram;
    var fresh = choice.fresh === undefined ? 0 : data.levels[choice.fresh];

    function exceeded(left) {
      return left < -data.hair;
    }

    function less(left) {
      return words.amount(Math.max(0, left * data.perKilogram), 0, "less", data.unit);
    }

    function more(left) {
      return words.amount(-left * data.perKilogram, 0, "more", data.unit);
    }

    var all = data.limits.map(function (limit) {
      var left = limit.room - each * (front * limit.inFront + house * limit.inHouse) - fresh * limit.water
        - limit.cargo * cargo;
      return {
        name: limit.name,
        left: left,
        more: exceeded(left) ? left : limit.cargo < data.noShare ? Infinity : left / limit.cargo
      };
    });
    var first = all.reduce(function (least, limit) {
      return limit.more < least.more ? limit : least;
    });
    return {
      answer: exceeded(first.more)
        ? words.say("result.too-heavy", { over: more(first.more), limit: first.name })
        : words.say("result.left", { left: less(first.more), limit: first.name }),
      rows: all.map(function (limit) {
        return [
          limit.name,
          exceeded(limit.left)
            ? words.say("too-much", { over: more(limit.left) })
            : words.say("result.row.left", { left: less(limit.left) })
        ];
      })
    };
  }

  window.bayfolio = window.bayfolio || {};
  window.bayfolio.loading = loading;
})();
