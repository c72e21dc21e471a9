/* Forms in which a reader varies what the page works out. They are made by script, since without it they are of no use. */
(function () {
  "use strict";

  var count = 0;

  function element(name, attributes, text) {
    var made = document.createElement(name);
    Object.keys(attributes || {}).forEach(function (key) {
      made.setAttribute(key, attributes[key]);
    });
    if (text !== undefined) {
      made.textContent = text;
    }
    return made;
  }

  function input(field, id) {
    if (field.choices) {
      var list = element("select", { id: id });
      field.choices.forEach(function (choice, at) {
        var option = element("option", { value: at }, choice);
        option.selected = at === field.chosen;
        list.append(option);
      });
      return list;
    }
    if (field.ticked !== undefined) {
      var box = element("input", { id: id, type: "checkbox" });
      box.checked = field.ticked;
      return box;
    }
    return element("input", {
      id: id, type: "number", inputmode: "decimal",
      value: field.value, min: field.least, max: field.most, step: field.step
    });
  }

  function chosen(field, made) {
    if (field.choices) {
      return Number(made.value);
    }
    if (field.ticked !== undefined) {
      return made.checked;
    }
    var number = made.value === "" ? NaN : Number(made.value);
    return Number.isFinite(number) ? Math.min(field.most, Math.max(field.least, number)) : field.value;
  }

  function row(cells, filled) {
    var line = element("tr");
    line.append(element("th", { scope: "row" }, cells[0]));
    var value = element("td", {}, cells[1]);
    if (filled !== undefined) {
      var bar = element("span", { "class": filled > 1.000001 ? "filled over" : "filled", "aria-hidden": "true" });
      var inside = element("span");
      inside.style.width = Math.min(100, 100 * filled) + "%";
      bar.append(inside);
      value.append(bar);
    }
    line.append(value);
    return line;
  }

  function build(place) {
    var fields = JSON.parse(place.dataset.asks);
    var figures = window.bayfolio.figures[place.dataset.question];
    var reckon = window.bayfolio[place.dataset.question];
    var form = element("form", { novalidate: "" });
    var fieldset = element("fieldset");
    fieldset.append(element("legend", {}, place.dataset.title));
    var inputs = fields.map(function (field) {
      var id = "field-" + (count += 1);
      var made = input(field, id);
      var label = element("label", { "for": id }, field.label);
      var line = element("p", { "class": field.ticked === undefined ? "field" : "field tick" });
      if (field.ticked === undefined) {
        line.append(label, made);
      } else {
        line.append(made, label);
      }
      fieldset.append(line);
      return made;
    });
    var answer = element("p", { "class": "answer", role: "status" });
    var rows = element("tbody");
    var table = element("table");
    table.append(rows);
    form.append(fieldset, answer, table);
    place.append(form);

    function update() {
      var choice = {};
      fields.forEach(function (field, at) {
        choice[field.name] = chosen(field, inputs[at]);
      });
      var result = reckon(figures, choice);
      answer.textContent = result.answer;
      rows.replaceChildren.apply(rows, result.rows.map(function (cells, at) {
        return row(cells, result.filled ? result.filled[at] : undefined);
      }));
    }

    form.addEventListener("input", update);
    form.addEventListener("submit", function (event) {
      event.preventDefault();
    });
    update();
  }

  document.querySelectorAll(".form[data-question]").forEach(build);
})();
