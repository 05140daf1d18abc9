"use strict";
(function () {
  var book = JSON.parse(document.getElementById("book").textContent);
  var why = document.getElementById("why");
  var title = document.getElementById("why-title");
  var body = document.getElementById("why-body");
  var cameFrom = null;
  var restsOn = null;

  function make(name, className, text) {
    var element = document.createElement(name);
    if (className) { element.className = className; }
    if (text !== undefined) { element.textContent = text; }
    return element;
  }

  /* Words between backticks are the gardener's own. */
  function say(element, text) {
    var parts = text.split("`");
    parts.forEach(function (part, i) {
      element.append(i % 2 === 1 && i < parts.length - 1 ? make("code", "", part) : part);
    });
    return element;
  }

  function draw(name, attributes, text) {
    var element = document.createElementNS("http://www.w3.org/2000/svg", name);
    Object.keys(attributes).forEach(function (key) { element.setAttribute(key, attributes[key]); });
    if (text !== undefined) { element.textContent = text; }
    return element;
  }

  /* A reason is [says, basis, line, place, from]. What was told once with all beneath it is not told again. */
  function tree(numbers, told) {
    var list = make("ul");
    numbers.forEach(function (number) {
      var reason = book.reasons[number];
      if (told[number] && reason[4].length) { return; }
      told[number] = true;
      var item = say(make("li"), reason[0] + " ");
      if (reason[2]) {
        var link = make("a", "", reason[3]);
        link.href = "#L" + reason[2];
        item.append(link);
      } else if (reason[3]) {
        item.append(make("span", "basis", reason[3]));
      } else if (reason[1] === "default" || reason[1] === "method") {
        item.append(make("span", "basis", reason[1] === "default" ? "assumed" : "method"));
      }
      if (reason[4].length) {
        var below = tree(reason[4], told);
        if (below.children.length) { item.append(below); }
      }
      list.append(item);
    });
    return list;
  }

  function cite(numbers, lines) {
    numbers.forEach(function (number) {
      var reason = book.reasons[number];
      if (reason[2]) { lines[reason[2]] = true; }
      cite(reason[4], lines);
    });
    return lines;
  }

  function day(count) {
    var first = document.getElementById("season").dataset.first.split("-");
    var date = new Date(Date.UTC(+first[0], first[1] - 1, +first[2] + count));
    return date.getUTCDate() + " " + ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"][date.getUTCMonth()];
  }

  /* One dot a weather year, on its day. */
  function years(days) {
    var there = days.filter(function (d) { return d >= 0; });
    if (!there.length) { return make("p", "basis", "It comes in no weather year."); }
    var from = Math.min.apply(null, there);
    var to = Math.max.apply(null, there);
    var svg = draw("svg", { "class": "years", role: "img", "aria-label": "In each weather year: " + days.map(function (d, i) {
      return book.years[i] + " " + (d < 0 ? "never" : day(d));
    }).join(", ") });
    var height = {};
    svg.append(draw("line", { x1: "2%", x2: "98%", y1: 36, y2: 36 }));
    days.forEach(function (d, i) {
      if (d < 0) { return; }
      height[d] = (height[d] || 0) + 1;
      var dot = draw("circle", { cx: (to === from ? 50 : 2 + 96 * (d - from) / (to - from)) + "%", cy: 36 - 5 * height[d], r: 2.4 });
      dot.append(draw("title", {}, book.years[i] + ": " + day(d)));
      svg.append(dot);
    });
    svg.append(draw("text", { x: "2%", y: 51 }, day(from)));
    svg.append(draw("text", { x: "98%", y: 51, "text-anchor": "end" }, day(to)));
    svg.append(draw("text", { x: "50%", y: 51, "text-anchor": "middle" }, there.length + " weather years"));
    return svg;
  }

  function light(lines) {
    document.querySelectorAll(".line.cited").forEach(function (e) { e.classList.remove("cited"); });
    var first = null;
    Object.keys(lines).forEach(function (line) {
      var element = document.getElementById("L" + line);
      if (element) {
        element.classList.add("cited");
        if (!first || element.compareDocumentPosition(first) & 4) { first = element; }
      }
    });
    var pane = document.getElementById("text");
    if (first && pane.scrollHeight > pane.clientHeight + 1) {
      pane.scrollTop += first.getBoundingClientRect().top - pane.getBoundingClientRect().top - 60;
    }
  }

  function open(heading, from) {
    cameFrom = from || cameFrom;
    document.querySelectorAll("[aria-expanded]").forEach(function (e) { e.removeAttribute("aria-expanded"); });
    if (from && from.dataset.thing) { from.setAttribute("aria-expanded", "true"); }
    title.textContent = heading;
    body.replaceChildren();
    why.hidden = false;
    why.scrollTop = 0;
    document.body.classList.add("asking");
    title.focus({ preventScroll: true });
  }

  /* Drawings are there for a wide page and for a narrow one, one of them not shown. */
  function isSeen(element) {
    return element.checkVisibility ? element.checkVisibility() : element.getClientRects().length > 0;
  }

  function close() {
    why.hidden = true;
    document.body.classList.remove("asking");
    light({});
    document.querySelectorAll("[aria-expanded]").forEach(function (e) { e.removeAttribute("aria-expanded"); });
    var back = cameFrom && isSeen(cameFrom) ? cameFrom : document.getElementById("text");
    back.focus();
  }

  /* A thing is [title, under, line, items]; an item [topic, answer, at, because, years]. */
  function ask(id, wanted, from) {
    var thing = book.things[id];
    if (!thing) { return; }
    open(thing[0], from);
    var under = say(make("p", "under"), thing[1] + " ");
    if (thing[2]) {
      var link = make("a", "", "in the plan");
      link.href = "#L" + thing[2];
      under.append(link);
    }
    body.append(under);
    thing[3].forEach(function (item, i) {
      var details = make("details");
      var summary = make("summary");
      summary.append(make("b", "", item[0]));
      if (item[1]) { say(summary, ": " + item[1]); }
      details.append(summary);
      details.addEventListener("toggle", function () {
        if (!details.open) { return; }
        if (details.children.length === 1) {
          details.append(tree(item[3], {}));
          if (item[4].length) { details.append(years(item[4])); }
        }
        light(cite(item[3], {}));
      });
      body.append(details);
      if (i === wanted) { details.open = true; }
    });
    if (!thing[3].length) { body.append(make("p", "", "Nothing is worked out about it by itself.")); }
    var opened = body.querySelector("details[open]");
    if (opened && opened.offsetTop > 120) { why.scrollTop = opened.offsetTop - 60; }
  }

  /* Which item of a bar lies nearest to where it was pointed at. */
  function nearest(id, share) {
    var best = 0;
    book.things[id][3].forEach(function (item, i) {
      var way = item[2] < 0 ? 2 : Math.abs(item[2] / 1000 - share);
      var than = book.things[id][3][best];
      if (way < (than[2] < 0 ? 2 : Math.abs(than[2] / 1000 - share))) { best = i; }
    });
    return best;
  }

  function reverse() {
    restsOn = {};
    Object.keys(book.things).forEach(function (id) {
      book.things[id][3].forEach(function (item, i) {
        Object.keys(cite(item[3], {})).forEach(function (line) {
          (restsOn[line] = restsOn[line] || []).push([id, i]);
        });
      });
    });
    Object.keys(book.things).forEach(function (id) {
      var line = book.things[id][2];
      if (line) { (restsOn[line] = restsOn[line] || []).unshift([id, 0]); }
    });
  }

  function askLine(line, from) {
    if (!restsOn) { reverse(); }
    var element = document.getElementById("L" + line);
    open("Line " + element.querySelector(".n").textContent, from);
    body.append(make("p", "under", element.querySelector("code").textContent.trim()));
    var list = make("ul");
    var last = "";
    (restsOn[line] || []).forEach(function (pair) {
      var thing = book.things[pair[0]];
      if (thing[0] + pair[1] === last) { return; }
      last = thing[0] + pair[1];
      var item = make("li");
      var button = make("button", "go", thing[0] + ", " + (thing[3][pair[1]] || [""])[0]);
      button.type = "button";
      button.addEventListener("click", function () { show(pair[0], pair[1]); });
      item.append(button);
      list.append(item);
    });
    body.append(make("p", "", list.children.length ? "On it rest:" : "It is quoted, and nothing shown rests on it alone."));
    body.append(list);
    var lit = {};
    lit[line] = true;
    document.querySelectorAll(".line.cited").forEach(function (e) { e.classList.remove("cited"); });
    element.classList.add("cited");
  }

  function show(id, item) {
    var bar = Array.from(document.querySelectorAll('main [data-thing="' + id + '"]')).find(isSeen);
    if (bar) { bar.scrollIntoView({ block: "center" }); }
    ask(id, item, bar);
  }

  document.addEventListener("click", function (event) {
    var line = event.target.closest("[data-line]");
    if (line) {
      event.preventDefault();
      askLine(line.dataset.line, line);
      return;
    }
    var thing = event.target.closest("[data-thing]");
    if (thing) {
      event.preventDefault();
      var bar = thing.querySelector(".bar");
      var wanted = 0;
      if (bar && event.detail > 0) {
        var box = bar.getBoundingClientRect();
        wanted = nearest(thing.dataset.thing, (event.clientX - box.left) / box.width);
      }
      ask(thing.dataset.thing, wanted, thing);
    }
  });

  document.addEventListener("keydown", function (event) {
    if (event.key === "Escape" && !why.hidden) { close(); }
    var row = event.target.closest && event.target.closest(".row");
    if (row && (event.key === "ArrowDown" || event.key === "ArrowUp")) {
      var rows = Array.from(document.querySelectorAll(".row"));
      var next = rows[rows.indexOf(row) + (event.key === "ArrowDown" ? 1 : -1)];
      if (next) { next.focus(); event.preventDefault(); }
    }
  });
  document.getElementById("why-close").addEventListener("click", close);

  /* Today's line stands where today is, unless the page was made for a day of its own. */
  var season = document.getElementById("season");
  if (season.dataset.live === "yes") {
    var now = new Date();
    var from = new Date(season.dataset.first + "T00:00");
    var at = (new Date(now.getFullYear(), now.getMonth(), now.getDate(), 12) - from) / 864e5 / book.days;
    document.querySelectorAll(".now").forEach(function (line) {
      line.setAttribute("x", at < 0 || at > 1 ? "-500%" : 100 * at + "%");
    });
  }
})();
