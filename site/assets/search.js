"use strict";
// Search over the index that stands beside this file. Nothing is fetched.
(function () {
  var input = document.getElementById("search-words");
  var count = document.getElementById("search-count");
  var found = document.getElementById("search-found");
  var entries = window.stacksideIndex;
  var engine = new MiniSearch({
    fields: ["title", "kind", "words"],
    storeFields: ["title", "kind", "href", "weight"],
    searchOptions: {
      boost: { title: 4, kind: 1.5 },
      prefix: function (term) { return term.length > 2; },
      fuzzy: function (term) { return term.length > 4 ? 0.2 : false; },
      boostDocument: function (id, term, stored) { return stored.weight; },
      combineWith: "OR"
    }
  });
  engine.addAll(entries.map(function (entry, i) {
    return { id: i, title: entry[0], kind: entry[1], href: entry[2], words: entry[3], weight: entry[4] };
  }));

  // A phrase of a group of synonyms stands for the whole group.
  function widened(words) {
    var query = " " + words.toLowerCase() + " ";
    var more = [];
    window.stacksideSynonyms.forEach(function (group) {
      if (group.some(function (word) { return query.indexOf(" " + word + " ") >= 0; })) {
        more = more.concat(group);
      }
    });
    return words + " " + more.join(" ");
  }

  function item(result) {
    var li = document.createElement("li");
    var link = document.createElement("a");
    link.href = result.href;
    link.textContent = result.title;
    li.appendChild(link);
    if (result.kind) {
      var kind = document.createElement("span");
      kind.className = "quiet";
      kind.textContent = " " + result.kind;
      li.appendChild(kind);
    }
    return li;
  }

  function run() {
    var words = input.value.trim();
    found.textContent = "";
    count.textContent = "";
    if (words.length < 2) { return; }
    var results = engine.search(widened(words)).slice(0, 30);
    results.forEach(function (result) { found.appendChild(item(result)); });
    var key = results.length === 0 ? "none" : results.length === 1 ? "one" : "many";
    count.textContent = count.getAttribute("data-" + key).replace("{n}", String(results.length));
  }

  document.getElementById("search-form").addEventListener("submit", function (event) {
    event.preventDefault();
    run();
    var first = found.querySelector("a");
    if (first) { first.focus(); }
  });
  input.addEventListener("input", run);
  input.focus();
})();
