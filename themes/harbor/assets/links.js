/* A button beside each address that copies it; whoever has no script selects it by a tap. */
(function () {
  "use strict";

  var words = window.bayfolio.words.copying;

  function taken(element) {
    var range = document.createRange();
    range.selectNodeContents(element.firstChild);
    var selection = window.getSelection();
    selection.removeAllRanges();
    selection.addRange(range);
    return document.execCommand("copy");
  }

  document.querySelectorAll("[data-copy]").forEach(function (address) {
    var title = address.closest(".sendable").querySelector("a").textContent;
    var text = address.textContent;
    var button = document.createElement("button");
    button.type = "button";
    button.textContent = words[address.dataset.copy];
    button.setAttribute("aria-label", words[address.dataset.copy] + ": " + title);
    var told = document.createElement("span");
    told.setAttribute("role", "status");
    function done() {
      told.textContent = words.done;
      window.setTimeout(function () { told.textContent = ""; }, 4000);
    }
    button.addEventListener("click", function () {
      if (navigator.clipboard) {
        navigator.clipboard.writeText(text).then(done, function () { if (taken(address)) { done(); } });
      } else if (taken(address)) {
        done();
      }
    });
    address.append(button, told);
  });
}());
