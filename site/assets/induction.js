"use strict";
// Self-checks, drills to walk, paths and the explorer. What a reader did stays on the device.
(function () {
  var KEY = "stackside-induction";

  function all(root, selector) {
    return Array.prototype.slice.call(root.querySelectorAll(selector));
  }

  function kept() {
    try { return JSON.parse(window.localStorage.getItem(KEY) || "{}") || {}; } catch (e) { return {}; }
  }

  function keep(name, value) {
    try {
      var whole = kept();
      whole[name] = value;
      window.localStorage.setItem(KEY, JSON.stringify(whole));
    } catch (e) { /* a private window keeps nothing */ }
  }

  function fill(words, values) {
    return words.replace(/\[(\d)\]/g, function (hole, number) { return values[Number(number)]; });
  }

  function button(words) {
    var made = document.createElement("button");
    made.type = "button";
    made.textContent = words;
    return made;
  }

  // Self-checks: each answer becomes a button, and what is right opens once one is pressed.
  function selfCheck(box) {
    var name = "check " + box.getAttribute("data-key");
    var done = kept()[name] || {};
    var questions = all(box, ".question");
    var score = document.querySelector(".score");

    function count() {
      var right = questions.filter(function (each) { return done[each.id] === "right"; }).length;
      score.hidden = false;
      score.textContent = fill(score.getAttribute("data-said"), [right, questions.length]);
    }

    questions.forEach(function (question) {
      all(question, ".replies li").forEach(function (item) {
        var press = button(item.textContent);
        item.textContent = "";
        item.appendChild(press);
        press.addEventListener("click", function () {
          all(question, ".replies button").forEach(function (each) { each.removeAttribute("aria-pressed"); });
          press.setAttribute("aria-pressed", "true");
          var right = item.getAttribute("data-reply") === "right";
          var first = !question.hasAttribute("data-answered");
          question.setAttribute("data-answered", item.getAttribute("data-reply"));
          question.querySelector(".said").textContent = item.getAttribute("data-said");
          if (right) { question.querySelector("details").open = true; }
          if (first || right) { done[question.id] = right ? "right" : "wrong"; }
          keep(name, done);
          count();
        });
      });
    });
    var again = button(box.getAttribute("data-again"));
    again.className = "again";
    box.appendChild(again);
    again.addEventListener("click", function () {
      done = {};
      keep(name, done);
      questions.forEach(function (question) {
        question.removeAttribute("data-answered");
        question.querySelector(".said").textContent = "";
        question.querySelector("details").open = false;
        all(question, ".replies button").forEach(function (each) { each.removeAttribute("aria-pressed"); });
      });
      count();
      questions[0].querySelector("button").focus();
    });
    count();
  }

  // A drill to walk: one step at a time, with a clock for those who wish one.
  function practice(box) {
    var steps = all(box, ".walk > li");
    var bar = box.querySelector(".walk-bar");
    var back = bar.querySelector(".walk-back");
    var next = bar.querySelector(".walk-next");
    var clock = bar.querySelector(".walk-clock");
    var shown = bar.querySelector(".walk-time");
    var said = box.querySelector(".walk-said");
    var name = "drill " + box.getAttribute("data-key");
    var at = 0;
    var since = null;
    var ticking = null;

    function seconds() {
      return since === null ? 0 : Math.floor((Date.now() - since) / 1000);
    }

    function tick() {
      shown.textContent = fill(shown.getAttribute("data-said"), [seconds()]);
    }

    function stop() {
      if (ticking !== null) { window.clearInterval(ticking); ticking = null; tick(); }
      clock.setAttribute("aria-pressed", "false");
    }

    function start() {
      since = Date.now();
      shown.hidden = false;
      clock.setAttribute("aria-pressed", "true");
      tick();
      ticking = window.setInterval(tick, 1000);
    }

    function show(moved) {
      steps.forEach(function (step, index) { step.hidden = index !== at; });
      back.disabled = at === 0;
      var last = at === steps.length - 1;
      next.textContent = next.getAttribute(last ? "data-again" : "data-next");
      if (moved) {
        said.textContent =
          fill(said.getAttribute("data-said"), [at + 1, steps.length]) + " " + steps[at].textContent.replace(/\s+/g, " ");
      }
      if (last) { stop(); keep(name, "walked"); }
    }

    function go(to) {
      at = Math.max(0, Math.min(steps.length - 1, to));
      show(true);
    }

    box.classList.add("walking");
    bar.hidden = false;
    next.addEventListener("click", function () { go(at === steps.length - 1 ? 0 : at + 1); });
    back.addEventListener("click", function () { go(at - 1); next.focus(); });
    clock.addEventListener("click", function () { if (ticking === null) { start(); } else { stop(); } });
    box.addEventListener("keydown", function (event) {
      if (event.key === "ArrowRight") { go(at + 1); event.preventDefault(); }
      if (event.key === "ArrowLeft") { go(at - 1); event.preventDefault(); }
    });
    show(false);
    window.addEventListener("beforeprint", function () {
      steps.forEach(function (step) { step.hidden = false; });
    });
    window.addEventListener("afterprint", function () { show(false); });
  }

  // A path: what was read is ticked on this device.
  function path(list) {
    var name = "path " + list.getAttribute("data-key");
    var read = kept()[name] || {};
    var left = document.querySelector(".path-left");

    function count() {
      var minutes = 0;
      var open = 0;
      all(list, "li").forEach(function (item) {
        if (!read[item.getAttribute("data-read")]) {
          open += 1;
          minutes += Number(item.getAttribute("data-minutes"));
        }
      });
      left.hidden = false;
      left.textContent = fill(left.getAttribute("data-said"), [open, minutes]);
    }

    all(list, "li").forEach(function (item) {
      var label = item.querySelector("label");
      var box = label.querySelector("input");
      var id = item.getAttribute("data-read");
      label.hidden = false;
      box.checked = Boolean(read[id]);
      box.addEventListener("change", function () {
        read[id] = box.checked;
        keep(name, read);
        count();
      });
    });
    count();
  }

  // The explorer: the same sums as the program's own. A test holds the two together.
  function explored(amperes, loopMillimetres, padCentimetres, seconds) {
    var loop = Math.PI * Math.pow(loopMillimetres / 10 / 2, 2);
    var pad = padCentimetres * padCentimetres;
    var atLoop = amperes / loop;
    var atPad = amperes / pad;
    return {
      loop: atLoop,
      pad: atPad,
      heating: Math.pow(atLoop / atPad, 2),
      factor: amperes * amperes * seconds
    };
  }

  function digits(value) {
    return value === 0 ? "0" : Number(value.toPrecision(3)).toLocaleString("en-GB", { maximumSignificantDigits: 3 });
  }

  function explorer(box) {
    var inputs = all(box, "input");
    function value(name) { return Number(box.querySelector("[name=" + name + "]").value); }
    function show() {
      inputs.forEach(function (input) {
        box.querySelector("output[for=" + input.id + "]").textContent = input.value + "\u00a0" + input.getAttribute("data-unit");
      });
      var found = explored(value("current"), value("loop"), value("pad"), value("time"));
      Object.keys(found).forEach(function (name) {
        var place = box.querySelector("[data-result=" + name + "]");
        place.textContent = digits(found[name]) + place.getAttribute("data-unit");
      });
    }
    box.querySelector(".explorer-controls").hidden = false;
    inputs.forEach(function (input) { input.addEventListener("input", show); });
    show();
  }

  window.stacksideInduction = { explored: explored };

  document.addEventListener("DOMContentLoaded", function () {
    var box = document.getElementById("self-check");
    if (box) { selfCheck(box); }
    all(document, ".practice-box").forEach(practice);
    all(document, "ol.reads").forEach(path);
    all(document, ".explorer").forEach(explorer);
  });
})();
