"use strict";
// What a test asks of a page in a browser. Brought into each page beside axe-core.
window.stacksideLook = (function () {
  // Nothing has to be loaded anew for a rule, and nobody reads the selectors.
  var quick = { resultTypes: ["violations"], preload: false, selectors: false };

  function options(more) { return Object.assign({}, quick, more); }

  var everyRule = options({
    runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
    rules: { "color-contrast-enhanced": { enabled: true } }
  });
  var contrastRules = options({
    runOnly: { type: "rule", values: ["color-contrast", "color-contrast-enhanced"] }
  });

  function axeSays(rules) {
    return axe.run(document, rules).then(function (result) {
      return result.violations.map(function (each) {
        return each.id + ": " + each.nodes.map(function (node) { return node.html; }).join(" | ");
      });
    });
  }

  function outside() {
    return performance.getEntriesByType("resource")
      .map(function (each) { return each.name; })
      .filter(function (name) { return !/^(file|data):/.test(name); })
      .concat(Array.from(document.querySelectorAll("[src], link[href]"))
        .map(function (each) { return each.src || each.href; })
        .filter(function (name) { return !/^(file|data):/.test(name); }));
  }

  // Too wide for the window, and what sticks out of it furthest.
  function wider() {
    var width = document.documentElement.clientWidth;
    var wide = document.documentElement.scrollWidth;
    if (wide <= width) { return foldedTooWide(); }
    var furthest = Array.from(document.body.querySelectorAll("*"))
      .filter(function (each) { return each.getBoundingClientRect().right >= wide - 0.5; }).pop();
    return [wide + " px wide on " + width + (furthest ? ": " + furthest.outerHTML.slice(0, 80) : "")];
  }

  // A table that folds, folded and still wider than its place.
  function foldedTooWide() {
    return Array.from(document.querySelectorAll(".fold:has(tbody)"))
      .filter(function (each) { return getComputedStyle(each.querySelector("tbody")).display === "block"; })
      .filter(function (each) { return each.scrollWidth > each.clientWidth + 1; })
      .map(function (each) { return each.scrollWidth + " px wide, folded: " + each.getAttribute("aria-label"); });
  }

  function largeLetters() {
    document.documentElement.style.fontSize = "200%";
    var found = wider();
    document.documentElement.style.fontSize = "";
    return found;
  }

  // The width of the paper in px at 96 to the inch, less the margins of the style sheet.
  function paper() {
    return getComputedStyle(document.body).page === "across" ? 1032 : 703;
  }

  // Contrast of words against their ground (WCAG 2.2, relative luminance and contrast ratio; from
  // memory), by computed style. It looks into drawings too, which axe-core does not.
  function parts(colour) {
    var found = /^rgba?\(([\d.]+), ([\d.]+), ([\d.]+)(?:, ([\d.]+))?\)$/.exec(colour);
    if (!found) { return null; }
    return { rgb: [found[1], found[2], found[3]].map(Number), alpha: found[4] === undefined ? 1 : Number(found[4]) };
  }

  function luminance(rgb) {
    var linear = rgb.map(function (value) {
      var share = value / 255;
      return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    });
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
  }

  function ratio(one, other) {
    var a = luminance(one), b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  // The nearest ground of an element outside drawings. Grounds of the site are opaque.
  function ground(element) {
    for (var each = element; each; each = each.parentElement) {
      var colour = parts(getComputedStyle(each).backgroundColor);
      if (colour && colour.alpha > 0) { return colour; }
    }
    return { rgb: [255, 255, 255], alpha: 1 };
  }

  // The shape that was painted last under the middle of some words of a drawing.
  function paintedUnder(words) {
    var box = words.getBBox();
    var drawing = words.ownerSVGElement;
    var point = drawing.createSVGPoint();
    point.x = box.x + box.width / 2;
    point.y = box.y + box.height / 2;
    var under = null;
    var shapes = drawing.querySelectorAll("rect, circle, polygon, path, polyline, text");
    for (var i = 0; i < shapes.length && shapes[i] !== words; i++) {
      var shape = shapes[i];
      if (!(shape instanceof SVGGeometryElement)) { continue; }
      var fill = parts(getComputedStyle(shape).fill);
      if (fill && fill.alpha > 0 && shape.isPointInFill(point)) { under = fill; }
    }
    return under || ground(drawing);
  }

  function shown(element) {
    return element.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true });
  }

  function tooFaint(words, colour, under) {
    var reached = ratio(colour.rgb, under.rgb);
    return colour.alpha < 1 || under.alpha < 1 || reached < 7
      ? ["contrast " + reached.toFixed(2) + ":1 of '" + words + "' (" + colour.rgb + " on " + under.rgb + ")"]
      : [];
  }

  function faint() {
    var found = [];
    var walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      var words = walker.currentNode.data.trim();
      var element = walker.currentNode.parentElement;
      if (!words || element.closest("svg, script, noscript") || !shown(element)) { continue; }
      found = found.concat(tooFaint(words, parts(getComputedStyle(element).color), ground(element)));
    }
    document.querySelectorAll("svg text").forEach(function (text) {
      if (!shown(text)) { return; }
      found = found.concat(tooFaint(text.textContent, parts(getComputedStyle(text).fill), paintedUnder(text)));
    });
    return found;
  }

  // What a reader of the paper would miss: a table that is folded, a drawing that is cut off.
  function hiddenFromPaper() {
    var found = [];
    document.querySelectorAll("main table, main pre").forEach(function (each) {
      if (each.getBoundingClientRect().height === 0 || !shown(each)) {
        found.push("folded away: " + each.textContent.replace(/\s+/g, " ").trim().slice(0, 60));
      }
    });
    document.querySelectorAll("main .scroll, main pre").forEach(function (each) {
      if (each.scrollWidth > each.clientWidth + 1 && getComputedStyle(each).overflowX !== "visible") {
        found.push("cut off: " + each.textContent.replace(/\s+/g, " ").trim().slice(0, 60));
      }
    });
    return found;
  }

  return {
    everyRule: everyRule,
    contrastRules: contrastRules,
    axe: axeSays,
    outside: outside,
    wider: wider,
    paper: paper,
    largeLetters: largeLetters,
    faint: faint,
    hiddenFromPaper: hiddenFromPaper
  };
})();
