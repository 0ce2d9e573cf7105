// The models of the lessons, as in the Java classes FeedLesson, TapLoad, DepthLesson, HelixLesson, PassesLesson and ThreadPasses; a test holds the two together.
// Each takes an object of values by name and gives numbers, tracks (lists of points) and the numbers of the sentences that hold.
var truelead = (function () {
  "use strict";
  var FLANK = 0.625 * Math.sqrt(3) / 2, STACK = 20000, CORE = 0.58, STRENGTH = 1000, FRICTION = 0.15, FORMING = 2.5, DOUBT = 2, NOTHING = 0.0005;

  function through() {
    var track = [];
    for (var i = 0; i < arguments.length; i += 2) { track.push([arguments[i], arguments[i + 1]]); }
    return track;
  }

  function circle(u, v, radius) {
    var track = [];
    for (var i = 0; i <= 72; i++) { track.push([u + radius * Math.cos(2 * Math.PI * i / 72), v + radius * Math.sin(2 * Math.PI * i / 72)]); }
    return track;
  }

  function tapLoad(p) {
    var middle = p.diameter - 0.75 * Math.sqrt(3) / 2 * p.pitch;
    var load = {
      shaving: function (turns) { return p.force * FLANK * p.pitch * p.error * Math.min(turns, p.threads); },
      axial: function (turns) {
        var lag = p.error * turns;
        var spring = lag <= p.travel ? p.stiffness * lag : p.stiffness * p.travel + STACK * (lag - p.travel);
        return Math.min(spring, load.shaving(turns));
      },
      used: function (turns) { return p.travel === 0 ? 0 : Math.min(p.travel, load.axial(turns) / p.stiffness); },
      shaved: function (turns) {
        var stack = Math.max(0, load.axial(turns) - p.stiffness * p.travel) / STACK;
        return Math.max(0, Math.min(p.error * turns - load.used(turns) - stack, p.error * p.threads));
      },
      pressure: function (turns) {
        var contact = Math.PI * middle * FLANK * p.pitch * Math.min(turns, p.threads);
        return contact > 0 ? load.axial(turns) / contact : 0;
      },
      torque: function (turns) {
        var cutting = p.force * p.pitch * p.pitch * p.diameter / 8000 * (p.forming ? FORMING : 1) * Math.min(1, turns / p.lead);
        var lag = p.error * turns;
        var share = lag > 0 ? load.shaved(turns) / lag : 0;
        var drag = FRICTION / Math.cos(Math.PI / 6);
        return cutting + load.axial(turns) * (drag + (1 - drag) * share) * middle / 2000;
      },
      strain: function (turns) {
        var core = CORE * p.diameter;
        var twist = STRENGTH * Math.PI * core * core * core / 16000;
        var pull = Math.sqrt(3) * STRENGTH * Math.PI * core * core / 4;
        var torsion = load.torque(turns) / twist, axial = load.axial(turns) / pull;
        return Math.sqrt(torsion * torsion + axial * axial);
      }
    };
    return load;
  }

  function reached(track, limit) {
    for (var i = 1; i < track.length; i++) {
      var a = track[i - 1], b = track[i];
      if (Math.abs(b[1]) >= limit) {
        return a[0] + (b[0] - a[0]) * Math.max(0, Math.min(1, (limit - Math.abs(a[1])) / (Math.abs(b[1]) - Math.abs(a[1]))));
      }
    }
    return NaN;
  }

  function feed(v) {
    var perTurn = v.mode === 1, floats = v.holder === 2, n = {}, t = {}, says = [];
    var ten = Math.pow(10, Math.round(v.decimals));
    var written = Math.floor(v.feed * ten + 0.5) / ten;
    var really = floats ? v.speed * v.turning / 100 : v.speed;
    var advance = perTurn ? written : written / really;
    var error = advance - v.pitch, turns = v.depth / v.pitch, travel = v.holder === 0 ? 0 : v.travel;
    var p = { pitch: v.pitch, diameter: v.diameter, error: Math.abs(error), travel: travel, stiffness: v.stiffness, force: v.force, threads: v.threads,
      lead: v.lead, forming: v.kind === 1 };
    var load = tapLoad(p);
    n.written = written;
    n.right = perTurn ? v.pitch : v.pitch * v.speed;
    n.advance = advance;
    n.error = error;
    n.turns = turns;
    n.lag = error * turns;
    n.used = load.used(turns);
    n.travel = travel;
    n.axial = load.axial(turns);
    n.pressure = load.pressure(turns);
    n.shaved = load.shaved(turns);
    n.ridge = v.pitch / 2;
    n.oversize = Math.sqrt(3) * n.shaved;
    n.torque = load.torque(turns);
    n.strain = 100 * load.strain(turns);
    var rate = really / 60;
    n.stop = rate / (2 * v.acceleration) * rate;
    n.runUp = n.stop * v.pitch;
    n.height = v.height;
    n.turning = v.turning;
    n.overrun = floats ? n.runUp : 0;
    n.reversal = floats ? Math.abs(error * turns - n.runUp) : n.used;
    ["apart", "holder", "cut", "pull", "load", "weak", "strong"].forEach(function (name) { t[name] = []; });
    var sign = error < 0 ? -1 : 1;
    for (var i = 0; i <= 120; i++) {
      var at = turns * i / 120, strain = 100 * load.strain(at);
      t.apart.push([at, sign * p.error * at]);
      t.holder.push([at, sign * load.used(at)]);
      t.cut.push([at, load.shaved(at)]);
      t.pull.push([at, load.axial(at)]);
      t.load.push([at, strain]);
      t.weak.push([at, DOUBT * strain]);
      t.strong.push([at, strain / DOUBT]);
    }
    t.limit = through(0, 100, turns, 100);
    n.full = travel > 0 ? reached(t.holder, travel * (1 - 1e-6)) : NaN;
    n.breaks = reached(t.load, 100);
    n.early = reached(t.weak, 100);
    n.late = reached(t.strong, 100);
    if (Math.abs(n.lag) < NOTHING) {
      says.push(0);
    } else {
      says.push(error < 0 ? 1 : 2);
      says.push(travel <= 0 ? 5 : isNaN(n.full) ? 3 : 4);
      if (n.shaved >= NOTHING) { says.push(n.shaved < n.ridge ? 6 : 7); }
    }
    says.push(!isNaN(n.breaks) ? 8 : !isNaN(n.early) ? 9 : 10);
    if (!floats && n.runUp > n.height) { says.push(11); }
    if (floats) {
      says.push(12);
      if (v.turning !== 100 && v.mode === 0) { says.push(13); }
    }
    return { numbers: n, tracks: t, says: says };
  }

  function radians(degrees) { return degrees / 180 * Math.PI; }

  function groove(v, drill) {
    var height = Math.max(0, v.diameter - drill) / 2;
    return height * (v.pitch / 8 + height * Math.tan(Math.PI / 6));
  }

  function torqueOf(v, drill) {
    var usual = v.force * v.pitch * v.pitch * v.diameter / 8000;
    if (v.kind === 1) { return FORMING * usual * Math.max(0, v.diameter - drill) / (0.0068 * v.pitch) / 65; }
    return usual * groove(v, drill) / groove(v, v.diameter - 2 * FLANK * v.pitch);
  }

  function depth(v) {
    var n = {}, t = {}, says = [], forming = v.kind === 1, d = v.drill, D = v.diameter;
    var slope = Math.tan(radians(v.angle) / 2), leadLength = v.lead * v.pitch, usual = (forming ? 1 : 2) * v.pitch, tip = v.tapTip;
    n.point = d / 2 / slope;
    n.full = v.drillTip - n.point;
    n.nose = Math.max(0, d - 2 * leadLength * Math.tan(radians(v.leadAngle)));
    n.contact = n.full + (d - n.nose) / 2 / slope;
    n.room = n.full - tip;
    n.into = tip - n.full;
    n.over = tip - n.contact;
    n.until = n.contact - tip;
    n.roomUsual = usual;
    n.thread = Math.max(0, tip - leadLength);
    n.missing = Math.max(0, v.wanted - n.thread);
    n.needed = v.wanted + leadLength + usual + n.point;
    n.reach = v.wanted + leadLength;
    n.percent = 100 * (D - d) / (0.75 * Math.sqrt(3) * v.pitch);
    n.torque = torqueOf(v, d);
    n.pinched = torqueOf(v, d - 0.0254);
    n.pinch = n.torque > 0 ? 100 * (n.pinched / n.torque - 1) : 0;
    var volume = forming ? 0 : groove(v, d) * Math.PI * (D + d) / 2 * n.thread / v.pitch;
    var space = Math.PI / 4 * d * d * (0.4 * tip + Math.max(0, n.full - tip) + n.point / 3);
    n.chips = 100 * v.loose * volume / space;
    t.hole = through(-d / 2, 0, -d / 2, -n.full, 0, -n.full - n.point, d / 2, -n.full, d / 2, 0);
    t.tap = through(-D / 2, 0, -D / 2, -n.thread, -n.nose / 2, -tip, n.nose / 2, -tip, D / 2, -n.thread, D / 2, 0);
    t.goal = through(-D / 2, -v.wanted, D / 2, -v.wanted);
    t.twist = [];
    for (var i = 0; i <= 40; i++) {
      var at = D - 1.2 * v.pitch + 0.8 * v.pitch * i / 40;
      t.twist.push([at, torqueOf(v, at)]);
    }
    t.here = through(d, 0, d, n.torque);
    says.push(n.until <= 0 ? 0 : n.room < 0 ? 1 : n.room < usual ? 2 : 3);
    says.push(n.missing > 0 ? 4 : 5);
    if (n.room < usual || n.missing > 0) { says.push(6); }
    says.push(7);
    if (n.chips > 100) { says.push(8); }
    return { numbers: n, tracks: t, says: says };
  }

  function helix(v) {
    var n = {}, t = {}, says = [], P = v.pitch, D = v.diameter;
    var path = v.slip === 1 ? 2 * v.radius : v.slip === 2 ? v.radius + v.cutter / 2 : v.slip === 3 ? v.radius / 2 : v.radius;
    var edge = path + v.cutter / 2, round = 2 * Math.PI * path;
    n.needed = (D - v.cutter) / 2;
    n.path = path;
    n.cut = 2 * path + v.cutter;
    n.size = n.cut - D;
    n.middle = n.cut - Math.sqrt(3) * (P / 2 - v.flat);
    n.lead = v.rise - P;
    n.drift = n.lead * v.depth / P;
    n.worth = Math.sqrt(3) * Math.abs(n.drift);
    n.turns = v.depth / v.rise;
    n.enters = D - P - v.cutter;
    n.entryRight = P * v.entryAngle / 360;
    n.entryOff = v.entryRise - n.entryRight;
    n.edgeFeed = v.speed * v.teeth * v.toothFeed;
    n.centreFeed = n.edgeFeed * path / edge;
    n.feed = v.feed;
    n.edgeOf = v.feed * edge / path;
    n.toothOf = n.edgeOf / (v.speed * v.teeth);
    n.times = edge / path;
    n.length = Math.sqrt(round * round + v.rise * v.rise);
    n.time = n.length / v.feed * 60;
    t.wall = circle(0, 0, D / 2);
    t.reach = circle(0, 0, edge);
    t.centre = circle(0, 0, path);
    t.tool = circle(path, 0, v.cutter / 2);
    t.entry = [];
    for (var i = 0; i <= 36; i++) {
      var part = i / 36, radius = path * Math.sin(Math.PI / 2 * part), angle = radians(v.entryAngle) * (part - 1) * (v.sense === 1 ? -1 : 1);
      t.entry.push([radius * Math.cos(angle), radius * Math.sin(angle)]);
    }
    var end = v.depth / Math.max(v.rise, P), way = v.way === 1 ? -1 : 1;
    t.programmed = through(0, 0, end, way * v.rise * end);
    t.needs = through(0, 0, end, way * P * end);
    says.push(Math.abs(n.size) < NOTHING ? 0 : 1);
    says.push(Math.abs(n.lead) < NOTHING ? 2 : 3);
    var counter = v.sense === 0, right = counter === (v.way === 0), wanted = v.hand === 0;
    says.push(right === wanted ? (right ? 4 : 5) : (right ? 7 : 6));
    says.push(counter ? 8 : 9);
    if (Math.abs(n.entryOff) >= NOTHING) { says.push(10); }
    says.push(11);
    if (n.enters <= 0) { says.push(12); }
    if (Math.abs(v.feed - n.edgeFeed) < 0.01 * n.edgeFeed) { says.push(13); }
    return { numbers: n, tracks: t, says: says };
  }

  function passDepths(v, first) {
    var depths = [], reached = 0;
    do {
      var next = v.division === 1 ? reached + first : Math.max(reached + v.least, first * Math.sqrt(depths.length + 1));
      reached = next > v.depth - 1e-9 ? v.depth : next;
      depths.push(reached);
    } while (reached < v.depth);
    return depths;
  }

  function grooves(pitch, at, step, depth) {
    var floor = pitch / 16, mouth = floor + depth * Math.tan(Math.PI / 6), track = [];
    for (var i = 0; i < 3; i++) {
      var middle = at + i * step;
      track.push([middle - mouth, 0], [middle - floor, -depth], [middle + floor, -depth], [middle + mouth, 0]);
    }
    return track;
  }

  function passes(v) {
    var n = {}, t = {}, says = [], P = v.pitch, starts = Math.round(v.starts);
    n.lead = P * starts;
    n.error = v.feed - n.lead;
    n.off = n.error * v.length / n.lead;
    n.play = (v.side === 0 ? 1.32 : 1) * 0.09 * Math.pow(P, 0.4) * Math.pow(v.diameter, 0.1);
    n.binds = Math.abs(n.error) < NOTHING ? NaN : n.play / (Math.sqrt(3) * Math.abs(n.error));
    n.lag = v.feed * v.speed * v.late / 60000;
    n.lastLag = v.lastFeed * v.lastSpeed * v.late / 60000;
    n.lagged = n.lastLag - n.lag;
    n.begin = v.begin;
    n.differs = v.lastFeed - v.feed;
    var whole = v.begin + n.lagged - n.differs * v.approach / v.feed;
    n.mouth = whole - P * Math.floor(whole / P + 0.5);
    n.drift = n.differs === 0 ? 0 : -n.differs * v.length / v.feed;
    n.end = n.mouth + n.drift;
    n.ridge = P / 2;
    n.need = n.lag * (0.02 - 1 - Math.log(0.02));
    n.approach = v.approach;
    t.beside = through(0, n.mouth, v.length, n.end);
    t.upper = through(0, P / 2, v.length, P / 2);
    t.lower = through(0, -P / 2, v.length, -P / 2);
    var first = Math.min(v.first, v.depth), depths = passDepths(v, first), heavy = 0, all = 0, chips = [];
    var cut = function (down) { return down * (P / 8 + down * Math.tan(Math.PI / 6)); };
    t.chip = [[0.5, 0]];
    depths.forEach(function (down, i) {
      chips.push(cut(down) - (i > 0 ? cut(depths[i - 1]) : 0));
      heavy = chips[i] > chips[heavy] ? i : heavy;
      t.chip.push([i + 0.5, chips[i]], [i + 1.5, chips[i]]);
      all += chips[i];
    });
    t.chip.push([chips.length + 0.5, 0]);
    var before = depths.length > 1 ? depths[depths.length - 2] : 0;
    n.passes = depths.length;
    n.heavy = chips[heavy];
    n.heavyAt = heavy + 1;
    n.force = v.force * n.heavy;
    n.ratio = n.heavy / chips[0];
    n.part = 100 * first / v.depth;
    n.taken = first;
    n.final = v.depth - before;
    var beside = Math.max(Math.abs(n.mouth), Math.abs(n.end));
    n.cut = beside > P / 2 ? P / 2 : Math.max(0, beside - n.final * Math.tan(Math.PI / 6));
    n.oversize = Math.sqrt(3) * n.cut;
    t.mean = through(0.5, all / chips.length, chips.length + 0.5, all / chips.length);
    t.others = grooves(P, 0, v.feed / starts, before);
    t.last = grooves(P, n.mouth, v.lastFeed / starts, v.depth);
    if (n.cut < NOTHING) {
      says.push(0);
    } else {
      says.push(1);
      if (Math.abs(n.drift) >= NOTHING) { says.push(2); }
      says.push(n.cut < n.ridge - NOTHING ? 3 : 4);
    }
    says.push(Math.abs(n.error) < NOTHING ? 5 : 6, 7);
    if (v.division === 1 && n.passes > 1) { says.push(8); }
    if (n.part > 60 && n.taken > 0.45) { says.push(9); }
    says.push(v.infeed === 0 ? 10 : 11);
    if (n.need > v.approach) { says.push(12); }
    return { numbers: n, tracks: t, says: says };
  }

  return { feed: feed, depth: depth, helix: helix, passes: passes };
})();
