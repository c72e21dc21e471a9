/*
 * Messages of the catalog, filled here as they are filled in the page.
 * words: language; decimal and thousands, the signs between digits; messages by key and units by name. A message is a list of
 * words, of {argument}, and of {argument, plural} or {argument, select} with a message for each case.
 */
(function () {
  "use strict";

  function said(words) {
    var rules = new Intl.PluralRules(words.language);

    function chosen(piece, value) {
      if (piece.select) {
        return piece.select[value] || piece.select.other;
      }
      return piece.plural["=" + value] || piece.plural[rules.select(value)] || piece.plural.other;
    }

    function fill(message, values) {
      return message.map(function (piece) {
        if (typeof piece === "string") {
          return piece;
        }
        var value = values[piece.argument];
        return piece.plural || piece.select ? fill(chosen(piece, value), values) : value;
      }).join("");
    }

    function digits(figure) {
      return figure.replace(/[.,]/g, function (sign) {
        return sign === "." ? words.decimal : words.thousands;
      });
    }

    return {
      say: function (key, values) {
        return fill(words.messages[key], values || {});
      },

      /* A figure with its unit, rounded as shown() rounds. */
      amount: function (value, decimals, toward, unit) {
        var figure = window.bayfolio.shown(value, decimals, toward);
        return fill(words.units[unit], {
          figure: digits(figure),
          count: Math.abs(Number(figure.replace(/,/g, "")))
        });
      }
    };
  }

  window.bayfolio = window.bayfolio || {};
  window.bayfolio.said = said;
})();
