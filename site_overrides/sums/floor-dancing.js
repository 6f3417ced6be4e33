// A counted section danced, every dancer through what their part dances, as build_tools/paths/dancing.py and
// walking.py have it. A move is [counts, metres, turns, way, level, bend, aim, facing, flags] of for_pages.py.
(() => {
  const floor = window.danceUnitBank.sums.floor;
  const SOON = 1e-9, SLIGHT = 1e-6, BEND = 0.2;

  floor.dancer = ([x, y], facing) => ({ x, y, facing, level: 1, legs: [], busy: 0 });

  // the facing `wanted`, as the shorter turn from `now` reaches it; half a turn goes right
  const nearestTurn = (now, wanted) => {
    const turn = floor.rest(wanted - now, 360);
    return now + (turn <= 180 + SOON ? turn : turn - 360);
  };

  const round = (turn) => {
    const found = floor.rest(turn, 360);
    return found > 360 - SLIGHT ? 0 : found;
  };

  function leg(dancer, start, end, x, y, facing, level, bend = 0, zigzag = false) {
    dancer.legs.push({
      start, end, here: [dancer.x, dancer.y, dancer.facing, dancer.level], there: [x, y, facing, level], bend, zigzag,
    });
    Object.assign(dancer, { x, y, facing: floor.rest(facing, 360), level });
  }

  // to a place along a slight curve, `most` metres at most, to face so there
  floor.goTo = (dancer, place, facing, start, end, most, bend = BEND / 2) => {
    const here = [dancer.x, dancer.y];
    const long = floor.metres(here, place);
    const part = long ? Math.min(1, most / long) : 1;
    const [x, y] = [here[0] + (place[0] - here[0]) * part, here[1] + (place[1] - here[1]) * part];
    const turned = nearestTurn(dancer.facing, facing);
    if (floor.metres([x, y], here) < SLIGHT && Math.abs(turned - dancer.facing) < SLIGHT) return;
    leg(dancer, start, end, x, y, turned, dancer.level, bend * long * part);
  };

  // `danced` are [who, count, numbers of moves]; `room` says who is whose partner and in whose group
  floor.dance = (dancers, danced, moves, together, begins, room) => {
    const waiting = [];
    for (const [who, from, numbers] of danced) {
      for (const one of whoDances(who, together, room.placeOf)) {
        let start = from;
        for (const number of numbers) {
          const end = start + moves[number][0];
          waiting.push({ one, move: moves[number], start, end });
          start = end;
        }
      }
    }
    waiting.sort((a, b) => a.start - b.start || a.one - b.one);
    for (let at = 0; at < waiting.length;) {
      const { start } = waiting[at];
      const now = [];
      for (; at < waiting.length && waiting[at].start - start < SOON; at += 1) now.push(waiting[at]);
      now.filter(({ one }) => dancers[one].busy <= begins + start + SOON)
        .map((each) => {
          const look = (whom) => seen(dancers, each.one, whom, begins + start, room);
          const [aim, asked] = [each.move[6] ?? null, each.move[7] ?? null];
          return { ...each, aim: typeof aim === "string" ? look(aim) : aim,
            faced: faced(dancers, each.one, asked, begins + start, look),
            partner: pointAt(dancers[room.partner[each.one]], begins + start) };
        })
        .forEach((each) => {
          dancers[each.one].busy = begins + each.end;
          const { legs } = dancers[each.one], before = legs.length;
          move(dancers[each.one], each, begins);
          if (legs.length > before && (each.move[8] & 7) === 1 && room.partner[each.one] !== each.one) {
            passing(legs.at(-1), each.partner, room.arm);
          }
        });
    }
  };

  // a curved way sideways bent further out where it would pass a partner nearer than an arm, as going_round.py has it
  function passing(made, partner, arm) {
    const { here: [x, y], there, bend } = made;
    const long = floor.metres([x, y], there);
    if (!bend || !long) return;
    const [dx, dy] = [(there[0] - x) / long, (there[1] - y) / long];
    const [px, py] = [partner[0] - x, partner[1] - y];
    const part = (px * dx + py * dy) / long;
    if (part < 0.1 || part > 0.9) return;
    const out = 4 * part * (1 - part), side = Math.sign(bend);
    const aside = side * (px * dy - py * dx), goes = Math.abs(bend) * out, wide = aside + 1.1 * arm;
    if (goes > aside && goes < wide) made.bend = side * Math.min(wide / out, long / 2);
  }

  function whoDances(who, together, placeOf) {
    if (who[0] < 0) return together.filter((_, n) => n % who[2] === who[1]).flat();
    return together.flatMap((group) => group.filter((_, n) => who.includes(placeOf(group, n))));
  }

  function pointAt(dancer, moment) {
    const last = dancer.legs.at(-1);
    if (!last || moment >= last.end) return [dancer.x, dancer.y];
    return window.danceUnitBank.paths.during(last, moment);
  }

  // where a dancer sees their partner or the centre; null where that is where they are
  function seen(dancers, one, whom, moment, room) {
    const here = pointAt(dancers[one], moment);
    let there = room.middle;
    if (whom === "home") return room.home[one];
    if (whom === "partner") {
      there = floor.lookedAt(one, room.partner[one], room.threes[one], (mate) => pointAt(dancers[mate], moment));
    } else if (room.mates[one].length > 1) {
      const points = room.mates[one].map((mate) => pointAt(dancers[mate], moment));
      there = [0, 1].map((at) => points.reduce((sum, point) => sum + point[at], 0) / points.length);
    }
    return Math.abs(there[0] - here[0]) < SOON && Math.abs(there[1] - here[1]) < SOON ? null : there;
  }

  function faced(dancers, one, asked, moment, look) {
    if (typeof asked !== "string") return asked;
    const there = look(asked);
    return there && floor.rest(floor.bearing(pointAt(dancers[one], moment), there) + (asked === "outwards" ? 180 : 0), 360);
  }

  // along the ring about a centre, chord by chord, all the way or as far as the steps reach: sideways it looks in,
  // forwards along the ring, and in again on the last count
  function ring(dancer, [, long, , way, , , , , flags, round = 0], start, lasts, level, centre) {
    const [x, y] = [dancer.x - centre[0], dancer.y - centre[1]];
    const angle = (round ? (round * Math.PI) / 180 : long / Math.hypot(x, y)) * (way > 0 ? -1 : 1);
    const chords = Math.max(1, Math.floor(lasts + 0.5));
    for (let n = 1; n <= chords; n += 1) {
      const [cos, sin] = [Math.cos((angle * n) / chords), Math.sin((angle * n) / chords)];
      const point = [centre[0] + x * cos - y * sin, centre[1] + x * sin + y * cos];
      const along = flags & 1 || n === chords ? 0 : way > 0 ? 90 : -90;
      const facing = nearestTurn(dancer.facing, floor.bearing(point, centre) + along);
      const step = lasts / chords;
      leg(dancer, start + step * (n - 1), start + step * n, ...point, facing, level);
    }
  }

  function move(dancer, { move: made, start, end, aim, faced: asked }, begins) {
    const [, long, turns = null, way = null, to = null, bent = 0, , , flags = 0] = made;
    const level = to ?? dancer.level;
    if (!long && turns === null && asked === null && level === dancer.level) return;
    if (Array.isArray(aim) && flags & 4) { ring(dancer, made, begins + start, end - start, level, aim); return; }
    let facing = dancer.facing + (turns || 0);
    if (asked !== null) {
      const turn = turns > 0 ? round(asked - dancer.facing) : -round(dancer.facing - asked);
      facing = turns === null ? nearestTurn(dancer.facing, asked) : dancer.facing + turn;
    }
    let [x, y, bend] = [dancer.x, dancer.y, 0];
    const point = Array.isArray(aim);
    if (way !== null && !(point && floor.metres([x, y], aim) < SLIGHT)) {
      let goes = (asked !== null && turns === null ? facing : dancer.facing) + way;
      if (aim !== null) {
        goes = point ? floor.bearing([x, y], aim) : aim;
        if (asked === null && turns === null && !(flags & 1)) facing = nearestTurn(dancer.facing, goes - way);
      }
      const far = point ? Math.min(long, floor.metres([x, y], aim)) : long;
      const [dx, dy] = floor.ahead(goes);
      [x, y, bend] = [x + dx * far, y + dy * far, (bent * far) / long];
    }
    leg(dancer, begins + start, begins + end, x, y, facing, level, bend, Boolean(flags & 2));
  }
})();
