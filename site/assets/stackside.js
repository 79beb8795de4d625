"use strict";
// Chooser: one step at a time, led by the address; and the room that this device used last.
(function () {
  var KEY = "stackside-room";

  function remembered() {
    try { return JSON.parse(window.localStorage.getItem(KEY) || "null"); } catch (e) { return null; }
  }

  function remember(room) {
    try { window.localStorage.setItem(KEY, JSON.stringify(room)); } catch (e) { /* private window */ }
  }

  function each(nodes, run) { Array.prototype.forEach.call(nodes, run); }

  function chooser(box) {
    var pick = document.getElementById("pick-site");
    if (!pick) { return; }

    function show(focus) {
      var target = document.getElementById(decodeURIComponent(window.location.hash.slice(1)));
      if (!target || !box.contains(target)) { target = pick; }
      var lesion = target.classList.contains("lesion") ? target : null;
      var site = lesion ? lesion.closest(".site") : target.classList.contains("site") ? target : null;
      pick.hidden = site !== null;
      each(box.querySelectorAll(".site"), function (each) { each.hidden = each !== site; });
      each(box.querySelectorAll(".lesions"), function (each) { each.hidden = lesion !== null; });
      each(box.querySelectorAll(".lesion"), function (each) { each.hidden = each !== lesion; });
      if (focus) {
        var heading = target.querySelector(lesion ? "h3" : "h2");
        heading.focus();
        heading.scrollIntoView();
      }
    }

    box.classList.add("stepwise");
    window.addEventListener("hashchange", function () { show(true); });
    show(false);
    var file = window.location.pathname.split("/").pop();
    remember({ name: box.getAttribute("data-room"), file: file });
  }

  function lastRoom(list) {
    var room = remembered();
    if (!room) { return; }
    each(list.querySelectorAll("a"), function (link) {
      if (link.getAttribute("href").split("/").pop() === room.file) {
        link.classList.add("last");
        list.insertBefore(link.parentNode, list.firstChild);
      }
    });
  }

  // A day that has passed since the page was made, by the clock of who reads it.
  function warn(line) {
    var now = new Date();
    var two = function (number) { return (number < 10 ? "0" : "") + number; };
    var today = now.getFullYear() + "-" + two(now.getMonth() + 1) + "-" + two(now.getDate());
    if (today > line.getAttribute("data-due")) {
      line.textContent = line.getAttribute("data-overdue");
      line.classList.add("overdue");
    }
  }

  // What is folded on the screen is open on paper, and folded again afterwards.
  var opened = [];
  window.addEventListener("beforeprint", function () {
    opened = Array.prototype.slice.call(document.querySelectorAll("details:not([open])"));
    each(opened, function (part) { part.open = true; });
  });
  window.addEventListener("afterprint", function () {
    each(opened, function (part) { part.open = false; });
  });

  document.addEventListener("DOMContentLoaded", function () {
    each(document.querySelectorAll("[data-due]"), warn);
    var box = document.getElementById("chooser");
    if (box) { chooser(box); }
    var rooms = document.querySelector("body.choose .picks");
    if (rooms) { lastRoom(rooms); }
  });
})();
