"use strict";
// Is this card current? The code on a card leads here with the edition that the card bears behind
// the hash; the page knows the edition in use and the day of its review.
(function () {
  var box = document.querySelector(".card-check");
  if (!box) { return; }

  function fits(bears, inUse) {
    if (inUse === "" || bears === "") { return ""; }
    if (!/^[0-9]+$/.test(bears)) { return "draft"; }
    if (bears === inUse) { return "same"; }
    return Number(bears) < Number(inUse) ? "superseded" : "unknown";
  }

  function today() {
    var now = new Date();
    function two(number) { return (number < 10 ? "0" : "") + number; }
    return now.getFullYear() + "-" + two(now.getMonth() + 1) + "-" + two(now.getDate());
  }

  function answer() {
    var bears = window.location.hash.slice(1).replace(/[^0-9.]/g, "").slice(0, 8);
    var fitting = fits(bears, box.getAttribute("data-edition"));
    var review = box.getAttribute("data-review");
    Array.prototype.forEach.call(box.querySelectorAll("[data-when]"), function (line) {
      var when = line.getAttribute("data-when");
      line.hidden = when === "overdue" ? review === "" || today() <= review : when !== fitting;
      Array.prototype.forEach.call(line.querySelectorAll(".yours"), function (place) {
        place.textContent = bears;
      });
    });
  }

  window.addEventListener("hashchange", answer);
  answer();
})();
