/*
 * Rows put in order by a column, and narrowed by words and choices. Without it the table is whole, in the order of the coaches.
 * A cell with data-order stands by that figure, whatever measure its words have; any other by its words.
 */
(function () {
  "use strict";

  function plain(text) {
    return text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase().replace(/\s+/g, " ").trim();
  }

  function lines(cell) {
    return Array.from(cell.children).map(function (line) { return line.textContent; });
  }

  /* Numbers within words count as numbers: 9 comes before 10. */
  var words = new Intl.Collator(document.documentElement.lang, { numeric: true, sensitivity: "base" });

  function compare(one, other) {
    var figures = [one.dataset.order, other.dataset.order];
    return figures[0] !== undefined && figures[1] !== undefined
      ? figures[0] - figures[1]
      : words.compare(one.textContent, other.textContent);
  }

  function ordered(table) {
    var heads = Array.from(table.tHead.rows[0].cells);
    heads.forEach(function (head, column) {
      var button = document.createElement("button");
      button.type = "button";
      button.append(head.firstChild);
      head.append(button);
      button.addEventListener("click", function () {
        var down = head.getAttribute("aria-sort") === "ascending";
        heads.forEach(function (each) { each.removeAttribute("aria-sort"); });
        head.setAttribute("aria-sort", down ? "descending" : "ascending");
        var body = table.tBodies[0];
        Array.from(body.rows).sort(function (one, other) {
          var cells = [one.cells[column], other.cells[column]];
          var empty = cells.map(function (cell) { return cell.textContent === ""; });
          /* What is not stated comes last either way. */
          return empty[0] || empty[1]
            ? empty[0] - empty[1]
            : (down ? -1 : 1) * compare(cells[0], cells[1]);
        }).forEach(function (row) { body.append(row); });
      });
    });
  }

  function narrowed(controls, table) {
    var asked = controls.querySelector("input");
    var choices = Array.from(controls.querySelectorAll("select"));
    var shown = controls.querySelector("[role=status] b");
    var rows = Array.from(table.tBodies[0].rows).map(function (row) {
      /* Words of two cells are no words of one. */
      return { row: row, text: plain(Array.from(row.cells).map(function (cell) {
        return cell.children.length ? lines(cell).join("\n") : cell.textContent;
      }).join("\n")) };
    });

    function narrow() {
      var wanted = plain(asked.value).split(" ");
      var left = rows.filter(function (each) {
        var hidden = !wanted.every(function (word) { return each.text.includes(word); })
          || !choices.every(function (choice) {
            return choice.value === "" || lines(each.row.cells[choice.dataset.column]).includes(choice.value);
          });
        each.row.hidden = hidden;
        return !hidden;
      });
      shown.textContent = left.length;
    }

    asked.addEventListener("input", narrow);
    choices.forEach(function (choice) { choice.addEventListener("change", narrow); });
    controls.hidden = false;
    /* A browser that goes back fills in what was there before. */
    narrow();
  }

  document.querySelectorAll("section").forEach(function (section) {
    var table = section.querySelector("table");
    ordered(table);
    narrowed(section.querySelector(".narrow"), table);
  });
})();
