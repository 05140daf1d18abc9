/* Plots: one stop of Tab each, arrows from mark to mark, and the mark nearest to where one taps. */
(function () {
  "use strict";
  var FAR = 30;
  var plots = Array.from(document.querySelectorAll(".plot"));

  function marks(plot) { return Array.from(plot.querySelectorAll(".mark")); }

  function middle(mark) {
    var box = mark.querySelector(".sign").getBoundingClientRect();
    return [box.left + box.width / 2, box.top + box.height / 2];
  }

  /* All signs of a plant, and its row. */
  function light(thing) {
    document.querySelectorAll(".lit").forEach(function (e) { e.classList.remove("lit"); });
    document.querySelectorAll('.mark[data-thing="' + thing + '"]').forEach(function (e) { e.classList.add("lit"); });
    document.querySelectorAll('.figures [data-thing="' + thing + '"]').forEach(function (e) { e.closest("tr").classList.add("lit"); });
  }

  function nearest(plot, x, y) {
    var best = null;
    var least = FAR;
    marks(plot).forEach(function (mark) {
      var at = middle(mark);
      var way = Math.hypot(at[0] - x, at[1] - y);
      if (way < least) { least = way; best = mark; }
    });
    return best;
  }

  function go(plot, from, to) {
    from.setAttribute("tabindex", "-1");
    to.setAttribute("tabindex", "0");
    to.focus();
  }

  plots.forEach(function (plot) {
    var all = marks(plot).sort(function (a, b) {
      return a.transform.baseVal[0].matrix.e - b.transform.baseVal[0].matrix.e;
    });
    all.forEach(function (mark, i) {
      mark.setAttribute("role", "button");
      mark.setAttribute("tabindex", i ? "-1" : "0");
      mark.setAttribute("aria-label", mark.querySelector("title").textContent);
    });
    plot.addEventListener("click", function (event) {
      var column = plot.classList.contains("columns") && event.target.closest(".mark");
      if (event.detail === 0 || column) { return; }
      var mark = nearest(plot, event.clientX, event.clientY);
      if (mark && mark !== event.target.closest(".mark")) {
        event.stopPropagation();
        mark.dispatchEvent(new MouseEvent("click", { bubbles: true }));
      }
    }, true);
    plot.addEventListener("keydown", function (event) {
      var at = all.indexOf(event.target);
      var way = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
      if (at < 0) { return; }
      if (way && all[at + way]) { go(plot, all[at], all[at + way]); }
      if (event.key === "Enter" || event.key === " ") {
        all[at].dispatchEvent(new MouseEvent("click", { bubbles: true }));
      }
      if (way || event.key === " ") { event.preventDefault(); }
    });
  });

  function over(event) {
    var thing = event.target.closest && event.target.closest(".mark[data-thing], .figures [data-thing]");
    if (thing) { light(thing.dataset.thing); }
  }
  document.addEventListener("focusin", over);
  document.addEventListener("pointerover", over);
  document.addEventListener("click", over);
})();
