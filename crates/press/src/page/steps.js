// One question a screen. Takes the key from the document it stands in (sections, their links
// and names) and shows one section of it at a time; it writes no question and no name itself. What it
// says besides stands in the document too, in the language of the page ("said").
//
// Where one is stands after the # of the address: "w-" and one letter an answer, y, n or c
// (could not tell). So every screen can be linked to, and the browser's own Back works.
//
// "Could not tell" follows both ways: first what comes after a yes, then what comes after a
// no, each until its ends. What is left is every end that an open way can still reach. A
// question that was asked already is not asked again: where ways meet, its answer holds.
(function () {
  "use strict";
  var root = document.documentElement;
  var SIDES = { y: "yes", n: "no", c: "fork" };
  var places = {};
  var first = null;

  function byId(id) { return document.getElementById(id); }
  function within(place, css) { return place.querySelector(css); }
  function target(link) { return link.getAttribute("href").slice(1); }

  var said = {};
  Array.prototype.forEach.call(byId("said").querySelectorAll("span"), function (line) {
    said[line.getAttribute("data-said")] = line.textContent;
  });

  // A sentence of the page with its gaps filled in.
  function say(name, gaps) {
    return said[name].replace(/\{(\w+)\}/g, function (gap, of) { return gaps[of]; });
  }

  function element(name, text, className) {
    var made = document.createElement(name);
    if (text) { made.textContent = text; }
    if (className) { made.className = className; }
    return made;
  }

  function mark(side) {
    var svgs = "http://www.w3.org/2000/svg";
    var svg = document.createElementNS(svgs, "svg");
    var use = document.createElementNS(svgs, "use");
    svg.setAttribute("class", "mark");
    svg.setAttribute("aria-hidden", "true");
    use.setAttribute("href", "#mark-" + side);
    svg.appendChild(use);
    return svg;
  }

  // The key, read once from the document before its links are moved.
  Array.prototype.forEach.call(document.querySelectorAll(".question"), function (section) {
    var asked = within(section, "h2").lastChild.textContent.trim();
    var yes = within(section, ".yes");
    var no = within(section, ".no");
    places[section.id] = {
      section: section, yes: target(yes), no: target(no), asked: asked,
      number: section.getAttribute("data-number"),
      said: {
        y: within(yes, "strong").textContent, n: within(no, "strong").textContent,
        c: say("cannot-tell")
      }
    };
    first = first || section.id;
  });
  Array.prototype.forEach.call(document.querySelectorAll(".end"), function (section) {
    places[section.id] = {
      section: section, end: true, name: section.getAttribute("data-name"),
      kinds: section.getAttribute("data-kinds").split(" ").filter(Boolean)
    };
  });

  // Where some answers lead: the ways still open, the ends found, and the steps so far. A way
  // is a place, the answers that lead straight to it, and what was supposed on the way.
  function walk(letters) {
    var open = [{ at: first, path: "", supposed: [] }];
    var ends = [];
    var asked = {};
    var steps = [];
    function settle() {
      while (open.length && (places[open[0].at].end || asked[open[0].at])) {
        var way = open.shift();
        var known = ends.some(function (end) { return end.at === way.at; });
        if (places[way.at].end && !known) { ends.push(way); }
      }
    }
    settle();
    for (var i = 0; i < letters.length && open.length; i += 1) {
      var letter = letters[i];
      var way = open.shift();
      var place = places[way.at];
      asked[way.at] = true;
      steps.push({
        at: way.at, letter: letter, before: letters.slice(0, i), supposed: way.supposed
      });
      (letter === "c" ? ["n", "y"] : [letter]).forEach(function (side) {
        var supposed = { asked: place.asked, said: place.said[side] };
        open.unshift({
          at: place[SIDES[side]], path: way.path + side,
          supposed: letter === "c" ? way.supposed.concat([supposed]) : way.supposed
        });
      });
      settle();
    }
    return { open: open, ends: ends, steps: steps, letters: letters.slice(0, steps.length) };
  }

  // Every end that some places can reach, in the order of the document.
  function reachable(starts) {
    var seen = {};
    var pending = starts.slice();
    while (pending.length) {
      var at = pending.pop();
      if (!seen[at]) {
        seen[at] = true;
        if (!places[at].end) { pending.push(places[at].yes, places[at].no); }
      }
    }
    return Object.keys(places).filter(function (at) { return seen[at] && places[at].end; });
  }

  // The straight answers that lead to a place, for links such as #q3 from a printed key.
  function pathTo(id) {
    var pending = [{ at: first, path: "" }];
    var seen = {};
    while (pending.length) {
      var way = pending.shift();
      if (way.at === id) { return way.path; }
      if (!seen[way.at] && !places[way.at].end) {
        seen[way.at] = true;
        pending.push({ at: places[way.at].yes, path: way.path + "y" });
        pending.push({ at: places[way.at].no, path: way.path + "n" });
      }
    }
    return null;
  }

  function showTrail(state) {
    var list = within(byId("trail"), "ol");
    var last = null;
    list.textContent = "";
    state.steps.forEach(function (step) {
      var place = places[step.at];
      var item = element("li", "", step.letter === "c" ? "is-cannot" : "is-" + SIDES[step.letter]);
      var link = element("a");
      var words = element("span");
      var supposed = step.supposed[step.supposed.length - 1];
      link.href = "#w-" + step.before;
      if (supposed && supposed !== last) {
        words.appendChild(element("span",
          say("suppose", { question: supposed.asked, answer: supposed.said }), "supposed"));
      }
      last = supposed;
      words.appendChild(element("span", place.asked + " ", "asked"));
      words.appendChild(element("strong", place.said[step.letter]));
      link.appendChild(mark(SIDES[step.letter]));
      link.appendChild(words);
      link.appendChild(element("span", say("back-here"), "change"));
      item.appendChild(link);
      list.appendChild(item);
    });
    byId("trail").hidden = !state.steps.length;
    within(byId("trail"), ".again").hidden = !state.open.length;
    byId("steps").hidden = false;
    byId("one-back").href = state.steps.length ? "#w-" + state.letters.slice(0, -1) : "#start";
  }

  // How many kinds some ends name. Where the key stops without a name there is none.
  function howManyKinds(ats) {
    var names = {};
    ats.forEach(function (at) {
      if (places[at].section.hasAttribute("data-stops")) { return; }
      var named = places[at].section.querySelectorAll(".kind h3");
      Array.prototype.forEach.call(named, function (name) { names[name.textContent] = true; });
    });
    return Object.keys(names).length;
  }

  // What is supposed at the moment, and what may still be in the hand.
  function showFork(state, left) {
    var box = byId("supposing");
    var now = state.open[0];
    var forked = state.letters.indexOf("c") >= 0;
    box.textContent = "";
    if (forked && now) {
      box.appendChild(element("p", now.supposed.length
        ? say("fork-suppose") : say("fork")));
      now.supposed.forEach(function (part) {
        var line = element("p", part.asked + " ");
        line.appendChild(element("strong", part.said));
        box.appendChild(line);
      });
    }
    box.hidden = !box.firstChild;
    var list = within(byId("left"), "ul");
    list.textContent = "";
    if (now) { left.forEach(function (at) { list.appendChild(element("li", places[at].name)); }); }
    byId("left").hidden = !(forked && now);
  }

  function showQuestion(state, left) {
    var place = places[state.open[0].at];
    var section = place.section;
    within(section, ".yes").href = "#w-" + state.letters + "y";
    within(section, ".no").href = "#w-" + state.letters + "n";
    within(section, ".cannot").href = "#w-" + state.letters + "c";
    var kinds = {};
    left.forEach(function (at) {
      places[at].kinds.forEach(function (kind) { kinds[kind] = true; });
    });
    var touch = within(section, ".touch");
    if (touch) {
      var any = false;
      Array.prototype.forEach.call(touch.querySelectorAll("li"), function (item) {
        item.hidden = !kinds[item.getAttribute("data-kind")];
        any = any || !item.hidden;
      });
      touch.hidden = !any;
    }
    return section;
  }

  function showList(state) {
    var section = byId("list");
    var kinds = within(section, ".kinds");
    var several = state.ends.length > 1;
    var count = howManyKinds(state.ends.map(function (way) { return way.at; }));
    kinds.textContent = "";
    within(section, "h2").textContent = several
      ? say("one-of", { count: said[count] || count }) : say("circle");
    var written = state.ends.some(function (way) {
      return !!places[way.at].section.querySelector(".sentence:not(.missing)");
    });
    within(section, ".told").textContent = several
      ? say(written ? "which-sentence" : "which-one") : say("circle-why");
    within(section, ".newcomer").textContent = several
      ? say(written ? "no-sentence-fits" : "none-fits") : "";
    within(section, ".newcomer").hidden = !several;
    state.ends.forEach(function (way) {
      var shown = places[way.at].section.querySelectorAll(".kind");
      Array.prototype.forEach.call(shown, function (kind) {
        kinds.appendChild(kind.cloneNode(true));
      });
      var link = element("a", say("it-fits", { name: places[way.at].name }), "this-one");
      link.href = "#w-" + way.path;
      kinds.lastChild.appendChild(link);
    });
    section.hidden = false;
    return section;
  }

  function show(section, spoken, move) {
    Array.prototype.forEach.call(document.querySelectorAll(".now"), function (other) {
      other.classList.remove("now", "arrived");
    });
    section.classList.add("now");
    var heading = within(section, "h2");
    document.title = heading.textContent.trim() + " – " + within(document, "h1").textContent;
    if (move) {
      section.classList.add("arrived");
      window.scrollTo(0, 0);
      heading.focus({ preventScroll: true });
      byId("spoken").textContent = spoken;
    }
  }

  function render(move) {
    root.classList.remove("asking");
    var hash = location.hash.slice(1);
    var letters = /^w-[ync]*$/.test(hash) ? hash.slice(2) : null;
    if (letters === null && places[hash]) { letters = pathTo(hash); }
    byId("list").hidden = true;
    if (letters === null || !first) {
      ["steps", "trail", "supposing", "left"].forEach(function (id) { byId(id).hidden = true; });
      show(byId("start"), "", move);
      return;
    }
    var state = walk(letters);
    var left = reachable(state.open.concat(state.ends).map(function (way) { return way.at; }));
    var kinds = howManyKinds(left);
    var still = kinds === 1 ? say("only-one")
      : kinds ? say("one-of-many", { count: kinds }) : "";
    showTrail(state);
    showFork(state, left);
    if (state.open.length) {
      root.classList.add("asking");
      show(showQuestion(state, left), still, move);
    } else if (state.ends.length === 1) {
      show(places[state.ends[0].at].section, say("at-end"), move);
    } else {
      show(showList(state), say("both-done"), move);
    }
  }

  if (first) { within(document, ".begin a").href = "#w-"; }
  root.className = "stepping";
  window.addEventListener("hashchange", function () { render(true); });
  // The browser has gone to the place named in the address, which may be half-way down.
  window.addEventListener("load", function () { window.scrollTo(0, 0); });
  render(false);
}());
