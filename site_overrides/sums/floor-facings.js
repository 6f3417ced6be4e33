// Who is whose partner, and which way each dancer faces, as build_tools/paths/facings.py has them.
(() => {
  const floor = window.danceUnitBank.sums.floor;
  const WAYS = 8, APART = 45, GOES = 2, LOOKS = [0.25, 0.5, 0.75, 1], CLEAR = 1.6, AT_A_WALL = 0.8, PAST_THE_BORDER = 0.4, ROUNDS = 4;
  const SLIGHT = 1e-6, SQUARE = 0.05, FACES = 67.5;

  const there = (place, other) => floor.metres(place, other) < SLIGHT;

  floor.partners = (together) => {
    if (together.every((group) => group.length === 1)) {
      return together.map((_, n) => ((n ^ 1) < together.length ? n ^ 1 : n));
    }
    const found = [];
    for (const group of together) {
      group.forEach((dancer, n) => { found[dancer] = group[(n ^ 1) < group.length ? n ^ 1 : Math.max(n - 1, 0)]; });
    }
    return found;
  };

  // the last three of each odd group, by each of them: who was there first, the partner of both, the odd one
  floor.inThrees = (together) => {
    const found = [];
    for (const group of together) {
      if (group.length > 2 && group.length % 2) for (const one of group.slice(-3)) found[one] = group.slice(-3);
    }
    return found;
  };

  // where a dancer has their partner before them: two who share one that stands off, level between them, look straight over,
  // and the partner between them
  floor.lookedAt = (dancer, partner, three, at) => {
    if (!three) return at(partner);
    const [first, shared, over] = three.map(at);
    const middle = floor.among([first, over]);
    const level = Math.abs(floor.metres(first, shared) - floor.metres(over, shared)) < SLIGHT;
    if (level && floor.metres(middle, shared) > floor.metres(first, over) / 2 + SLIGHT) {
      const here = at(dancer);
      return dancer === three[1] ? middle : shared.map((one, n) => one + here[n] - middle[n]);
    }
    return dancer === three[2] ? straightAcross(over, shared, first) : at(partner);
  };

  // where who shares the partner of one who stands squarely beside them looks: straight across as that one does
  const straightAcross = (here, partner, beside) => {
    if (there(beside, partner)) return partner;
    const [across, aside] = [partner, here].map((one) => [one[0] - beside[0], one[1] - beside[1]]);
    const slant = Math.abs(across[0] * aside[0] + across[1] * aside[1]);
    if (slant >= SQUARE * Math.hypot(...across) * Math.hypot(...aside)) return partner;
    return [partner[0] + aside[0], partner[1] + aside[1]];
  };

  // a standing is as floor-places.js has it; its facing, the side that nobody faces, whether a group faces one way
  floor.facings = (standing, places, together, centres, area) => {
    const facing = standing[1];
    if (facing in floor.SIDES) return places.map(() => floor.SIDES[facing]);
    if (facing === "mixed" && standing[11]) return asGroups(places, together, area, standing[6]);
    if (facing === "mixed") return withRoom(places, area, floor.SIDES[standing[6]] ?? null);
    if (facing === "partner") {
      const [partner, threes] = [floor.partners(together), floor.inThrees(together)];
      return places.map((place, n) => {
        const look = floor.lookedAt(n, partner[n], threes[n], (one) => places[one]);
        return there(place, look) ? 0 : floor.bearing(place, look);
      });
    }
    const turned = facing === "outwards" ? 180 : 0;
    return places.map((place, n) =>
      there(place, centres[n]) ? turned : floor.rest(floor.bearing(place, centres[n]) + turned, 360));
  };

  // one of the four sides for each group, that with the most floor; of sides with as much the next in turn
  function asGroups(places, together, area, barred) {
    const middles = together.map((group) => floor.among(group.map((one) => places[one])));
    const sides = Object.keys(floor.SIDES).filter((side) => side !== barred).map((side) => floor.SIDES[side]);
    const found = [];
    together.forEach((group, n) => {
      const [x, y] = middles[n];
      const others = middles.filter((_, k) => k !== n).map((other) => [other[0] - x, other[1] - y]);
      let best = -Infinity, way = 0;
      sides.forEach((_, k) => {
        const side = sides[(n + k) % sides.length];
        const open = floorAhead(middles[n], side, others, area);
        if (open > best + SLIGHT) [best, way] = [open, side];
      });
      for (const one of group) found[one] = way;
    });
    return found;
  }

  function floorAhead([x, y], way, others, [left, front, right, back]) {
    const [dx, dy] = floor.ahead(way);
    const wall = (right - x) * Math.max(dx, 0) + (x - left) * Math.max(-dx, 0) +
      (back - y) * Math.max(dy, 0) + (y - front) * Math.max(-dy, 0);
    const along = ([ox, oy]) => ox * dx + oy * dy;
    const before = others.filter((one) => along(one) > Math.abs(one[0] * dy - one[1] * dx) - SLIGHT).map(along);
    return floor.fine(Math.min(wall, ...before.filter((far) => far > SLIGHT)));
  }

  // a way for each on which nobody comes near who goes a way of their own meanwhile
  function withRoom(places, area, barred) {
    const near = places.map((here, at) =>
      places.map((other, n) => [floor.fine(floor.metres(here, other)), n])
        .filter(([far, n]) => n !== at && far < 2 * GOES + CLEAR)
        .sort((a, b) => a[0] - b[0] || a[1] - b[1])
        .map(([, n]) => n));
    const ways = places.map((place, n) => waysOf(n, place, floor.middle(area), barred));
    const gone = places.map((here, n) => ways[n].map((way) => {
      const [dx, dy] = floor.ahead(way);
      return LOOKS.map((part) => [here[0] + dx * GOES * part, here[1] + dy * GOES * part]);
    }));
    const walls = gone.map((of) => of.map((way) => toAWall(way.at(-1), area)));
    const going = places.map((here) => LOOKS.map(() => here));
    const chosen = places.map(() => 0);
    for (let round = 0; round < ROUNDS; round += 1) {
      const before = chosen.join();
      places.forEach((_, at) => {
        chosen[at] = clearest(gone[at], walls[at], near[at].map((n) => going[n]), chosen[at]);
        going[at] = gone[at][chosen[at]];
      });
      if (chosen.join() === before) break;
    }
    return chosen.map((way, n) => ways[n][way]);
  }

  function waysOf(dancer, place, middle, barred) {
    const out = there(middle, place) ? 0 : floor.bearing(middle, place);
    const round = floor.fine(out % 90) % 90 < APART ? 1 : -1;
    return LOOKS.concat(LOOKS)
      .map((_, n) => floor.rest(out + round * APART * ((dancer * 3 + n) % WAYS), 360))
      .filter((way) => barred === null || floor.fine(Math.abs(floor.rest(way - barred + 180, 360) - 180)) >= FACES);
  }

  function clearest(gone, walls, others, now) {
    let best = -1, found = now;
    for (let n = 0; n < gone.length; n += 1) {
      const way = (now + n) % gone.length;
      let clear = Math.min(CLEAR, walls[way]) ** 2;
      for (const other of others) {
        if (clear <= best) break;
        gone[way].forEach(([x, y], look) => {
          clear = Math.min(clear, (x - other[look][0]) ** 2 + (y - other[look][1]) ** 2);
        });
      }
      if (clear > best + SLIGHT) {
        [best, found] = [clear, way];
        if (best >= CLEAR ** 2 - SLIGHT) break;
      }
    }
    return found;
  }

  function toAWall([x, y], [left, front, right, back]) {
    const wall = Math.min(x - left, right - x, y - front, back - y);
    return Math.max(0, wall + (wall > -SLIGHT ? AT_A_WALL : PAST_THE_BORDER));
  }
})();
