// Moves the page: reads the controls, asks the model, writes sentences, numbers and plots. Draws as PlotFrame and PlotPicture do.
(function () {
  "use strict";
  var lesson = JSON.parse(document.getElementById("lesson").textContent);
  var form = document.getElementById("controls");
  var WIDTH = 440, LEFT = 58, TOP = 12, LINE = 17, BELOW = 44, MARGIN = 0.06;

  function fixed(value, decimals) {
    if (!isFinite(value)) { return "?"; }
    var text = (Math.round(Math.abs(value) * Math.pow(10, decimals)) / Math.pow(10, decimals)).toFixed(decimals);
    return (value < 0 && Number(text) !== 0 ? "-" : "") + text;
  }

  function escape(text) {
    return String(text).replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
  }

  function values() {
    var given = {};
    form.querySelectorAll("[name]").forEach(function (field) {
      var value = Number(field.value);
      if (field.type === "number") {
        value = field.value === "" || !isFinite(value) ? Number(field.defaultValue) : Math.min(Number(field.max), Math.max(Number(field.min), value));
      }
      given[field.name] = value;
    });
    return given;
  }

  function widen(range, at, below) {
    var size = range[at + 1] - range[at];
    if (size < 1e-9) { size = Math.max(1e-3, Math.abs(range[at])); range[at + 1] = range[at] + size; }
    range[at] -= below * size;
    range[at + 1] += MARGIN * size;
  }

  function stretch(range, at, size) {
    var middle = (range[at] + range[at + 1]) / 2;
    range[at] = middle - size / 2;
    range[at + 1] = middle + size / 2;
  }

  function ticks(least, most) {
    var rough = (most - least) / 6, power = Math.pow(10, Math.floor(Math.log(rough) / Math.LN10));
    var step = power * (rough / power <= 1 ? 1 : rough / power <= 2 ? 2 : rough / power <= 5 ? 5 : 10), list = [];
    for (var number = Math.ceil(least / step - 1e-9); number * step <= most + 1e-9 * step; number++) { list.push(number * step); }
    list.decimals = Math.max(0, Math.min(6, Math.ceil(-Math.log(step) / Math.LN10 - 1e-9)));
    return list;
  }

  function line(x1, y1, x2, y2, width, dash) {
    return '<path d="M' + x1.toFixed(1) + " " + y1.toFixed(1) + "L" + x2.toFixed(1) + " " + y2.toFixed(1) + '" stroke="currentColor" stroke-width="' + width + '" fill="none"'
      + (dash ? ' stroke-dasharray="' + dash + '"' : "") + "/>";
  }

  function label(x, y, anchor, text) {
    return '<text x="' + x.toFixed(1) + '" y="' + y.toFixed(1) + '" text-anchor="' + anchor + '" fill="currentColor">' + escape(text) + "</text>";
  }

  function draw(plot, tracks) {
    var field = plot.trueToScale ? 330 : 230, width = WIDTH - LEFT - 14, range = [Infinity, -Infinity, Infinity, -Infinity];
    plot.curves.forEach(function (curve) {
      tracks[curve.name].forEach(function (point) {
        range = [Math.min(range[0], point[0]), Math.max(range[1], point[0]), Math.min(range[2], point[1]), Math.max(range[3], point[1])];
      });
    });
    widen(range, 2, plot.trueToScale || range[2] < 0 ? MARGIN : 0);
    if (plot.trueToScale) {
      widen(range, 0, MARGIN);
      var scale = Math.max((range[1] - range[0]) / width, (range[3] - range[2]) / field);
      stretch(range, 0, scale * width);
      stretch(range, 2, scale * field);
    }
    function x(across) { return LEFT + (across - range[0]) / (range[1] - range[0]) * width; }
    function y(up) { return TOP + (range[3] - up) / (range[3] - range[2]) * field; }
    var right = LEFT + width, bottom = TOP + field, list = ticks(range[0], range[1]);
    var svg = '<svg viewBox="0 0 ' + WIDTH + " " + (TOP + field + BELOW + LINE * plot.curves.length) + '" role="img" aria-label="'
      + escape(plot.title + ": " + plot.up + " over " + plot.across) + '" font-size="12">';
    list.forEach(function (tick) { svg += line(x(tick), bottom, x(tick), bottom + 4, 1) + label(x(tick), bottom + 16, "middle", fixed(tick, list.decimals)); });
    var rows = ticks(range[2], range[3]);
    rows.forEach(function (tick) {
      svg += line(LEFT - 4, y(tick), LEFT, y(tick), 1) + '<path d="M' + LEFT + " " + y(tick).toFixed(1) + "H" + right
        + '" stroke="currentColor" stroke-width="0.5" opacity="0.25" fill="none"/>' + label(LEFT - 7, y(tick) + 4, "end", fixed(tick, rows.decimals));
    });
    svg += line(LEFT, TOP, LEFT, bottom, 1) + line(LEFT, bottom, right, bottom, 1) + label((LEFT + right) / 2, bottom + 31, "middle", plot.across)
      + '<text transform="translate(13 ' + ((TOP + bottom) / 2) + ') rotate(-90)" text-anchor="middle" fill="currentColor">' + escape(plot.up) + "</text>";
    plot.curves.forEach(function (curve, number) {
      svg += '<path d="' + tracks[curve.name].map(function (point, i) { return (i ? "L" : "M") + x(point[0]).toFixed(1) + " " + y(point[1]).toFixed(1); }).join("")
        + '" stroke="currentColor" stroke-width="2" fill="none"' + (curve.dash ? ' stroke-dasharray="' + curve.dash + '"' : "") + "/>";
      var at = TOP + field + BELOW + LINE * number;
      svg += line(LEFT, at, LEFT + 40, at, 2, curve.dash) + label(LEFT + 48, at + 4, "start", curve.label);
    });
    return svg + "</svg>";
  }

  function show() {
    var outcome = truelead[lesson.name](values());
    document.getElementById("said").innerHTML = outcome.says.map(function (number) {
      return "<li>" + escape(lesson.sentences[number]).replace(/\{(\w+):(\d)\}/g, function (blank, name, decimals) { return fixed(outcome.numbers[name], Number(decimals)); }) + "</li>";
    }).join("\n");
    lesson.readings.forEach(function (reading) {
      var value = outcome.numbers[reading.name];
      document.getElementById("r-" + reading.name).textContent = isNaN(value) ? reading.none : fixed(value, reading.decimals) + (reading.unit ? " " + reading.unit : "");
    });
    var pictures = document.querySelectorAll(".plot");
    lesson.plots.forEach(function (plot, number) { pictures[number].innerHTML = draw(plot, outcome.tracks); });
  }

  var mode = form.querySelector("[name=mode]");
  form.addEventListener("input", function (event) {
    var slider = event.target;
    if (slider.dataset.for) {
      form.querySelector("[name=" + slider.dataset.for + "]").value = slider.value;
    } else if (slider.type === "number") {
      form.querySelector("[data-for=" + slider.name + "]").value = slider.value;
    }
    if (slider === mode) { // the same advance in the other mode
      var feed = form.querySelector("[name=feed]"), speed = Number(form.querySelector("[name=speed]").value);
      feed.value = Number((mode.value === "1" ? Number(feed.value) / speed : Number(feed.value) * speed).toFixed(6));
      form.querySelector("[data-for=feed]").value = feed.value;
    }
    show();
  });
  form.addEventListener("submit", function (event) { event.preventDefault(); });
  show();
})();
