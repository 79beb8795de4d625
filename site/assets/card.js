"use strict";
// Is this card current? The code on a card leads here with the edition that the card bears and the
// first signs of its fingerprint behind the hash; the page knows those of the card in use and the
// day of its review.
(function () {
  var box = document.querySelector(".card-check");
  if (!box) { return; }

  function fits(bears, inUse) {
    if (inUse === "" || bears[0] === "") { return ""; }
    if (!/^[0-9]+$/.test(bears[0])) { return "draft"; }
    var current = inUse.split("-");
    if (bears[0] === current[0]) { return bears[1] === current[1] ? "same" : "other"; }
    return Number(bears[0]) < Number(current[0]) ? "superseded" : "unknown";
  }

  function held() {
    var parts = window.location.hash.slice(1).split("-");
    return [parts[0].replace(/[^0-9.]/g, "").slice(0, 8), parts[1] || ""];
  }

  function today() {
    var now = new Date();
    function two(number) { return (number < 10 ? "0" : "") + number; }
    return now.getFullYear() + "-" + two(now.getMonth() + 1) + "-" + two(now.getDate());
  }

  function answer() {
    var bears = held();
    var fitting = fits(bears, box.getAttribute("data-edition"));
    var review = box.getAttribute("data-review");
    Array.prototype.forEach.call(box.querySelectorAll("[data-when]"), function (line) {
      var when = line.getAttribute("data-when");
      line.hidden = when === "overdue" ? review === "" || today() <= review : when !== fitting;
      Array.prototype.forEach.call(line.querySelectorAll(".yours"), function (place) {
        place.textContent = bears[0];
      });
    });
  }

  window.addEventListener("hashchange", answer);
  answer();
})();
