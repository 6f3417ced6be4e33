// A class put down in a hall and moved through a whole dance: as build_tools/paths/whole.py does it for the printed
// pages and the rules, for the class and the hall of the day. `data` is what for_pages.py writes. Generated classes
// and halls hold the two to the same places.
(() => {
  const bank = window.danceUnitBank;
  const { sums } = bank;
  const { floor } = sums;
  const ROUNDS = 12, SLIGHT = 0.05;
  const LOOKED_AT = [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1];

  // everybody's legs, to be asked of bank.paths.at, and the parts with who is in which row
  floor.paths = (data, pupils, hall) => {
    const area = floor.dancingArea(hall, data.lined);
    const walk = { data, area, dancers: [], places: [] };
    const parts = data.parts.map((part) => {
      if (!part.letter) return part;
      const section = data.sections[part.letter];
      const together = classInGroups(pupils, section.size, data.sizes);
      if (!walk.dancers.length) putDown(walk, section, together);
      else come(walk, part, section, together);
      through(walk, part, section, together);
      return { ...part, ...rolesIn(section, together) };
    });
    return { first: walk.places, legs: walk.dancers.map((dancer) => dancer.legs), parts, hall, data };
  };

  // in how many dancers go through a wall in each counted section, as build_tools/paths/leaving.py tells it
  floor.leaving = (paths) => {
    const [x, y] = paths.hall.map((size) => size / 2 + SLIGHT);
    const out = (leg) => (leg.bend ? LOOKED_AT : [0, 1]).some((part) => {
      const [across, along] = bank.paths.during(leg, leg.start + (leg.end - leg.start) * part);
      return Math.abs(across) > x || Math.abs(along) > y;
    });
    return paths.parts.flatMap((part) => {
      if (!part.letter || !paths.data.sections[part.letter].danced) return [];
      const within = (leg) => part.begins <= leg.start && leg.start < part.begins + part.lasts;
      const dancers = paths.legs.filter((legs) => legs.some((leg) => within(leg) && out(leg))).length;
      return dancers ? [{ letter: part.letter, dancers }] : [];
    });
  };

  // the class in groups of neighbours in number, made of whole smaller groups of the dance
  function classInGroups(pupils, size, sizes) {
    let first = 0;
    return sizesOf(pupils, size, sizes).map((many) => Array.from({ length: many }, () => first++));
  }

  function sizesOf(pupils, size, sizes) {
    const usual = sizes.filter((one) => one > 1 && one < size && size % one === 0).at(-1);
    if (usual) return sums.joinedInOrder(sizesOf(pupils, usual, sizes), usual, size);
    return sums.groups(pupils, size).sort((a, b) => (a === size) - (b === size));
  }

  const middle = (points) => [0, 1].map((at) => points.reduce((sum, point) => sum + point[at], 0) / points.length);
  const here = (walk) => walk.dancers.map(({ x, y }) => [x, y]);
  const sized = (together) => together.map((group) => group.length);

  function byDancer(groups, together, takes) {
    const found = [];
    together.forEach((group, n) => group.forEach((dancer, at) => { found[dancer] = groups[takes[n]][at]; }));
    return found;
  }

  // each dancer's place so that the ways are short, groups of a size changing over whole
  function shortest(walk, standing, together) {
    const groups = floor.slots(standing, sized(together), walk.area, walk.data.step);
    const at = here(walk);
    const takes = together.map((_, n) => n);
    for (const size of [...new Set(sized(together))].sort((a, b) => a - b)) {
      const ours = takes.filter((n) => together[n].length === size);
      const middles = ours.map((n) => middle(together[n].map((one) => at[one])));
      const nearest = nearestPlaces(middles, ours.map((n) => middle(groups[n])));
      ours.forEach((n, k) => { takes[n] = ours[nearest[k]]; });
    }
    return byDancer(groups, together, takes);
  }

  function nearestPlaces(from, places) {
    const far = from.map((one) => places.map((place) => floor.fine(floor.metres(one, place))));
    const least = far.map((row) => Math.min(...row));
    const free = new Set(places.keys());
    const taken = [];
    for (const one of [...from.keys()].sort((a, b) => least[b] - least[a] || a - b)) {
      const place = [...free].reduce((best, p) => (far[one][p] < far[one][best] ? p : best));
      taken[one] = place;
      free.delete(place);
    }
    for (let round = 0, changed = true; changed && round < ROUNDS; round += 1) {
      changed = false;
      for (let one = 0; one < from.length; one += 1) {
        for (let other = one + 1; other < from.length; other += 1) {
          const [a, b] = [taken[one], taken[other]];
          if (far[one][b] + far[other][a] < far[one][a] + far[other][b] - 1e-9) {
            [taken[one], taken[other]] = [b, a];
            changed = true;
          }
        }
      }
    }
    return taken;
  }

  function facing(walk, section, places, together) {
    const alone = together.every((group) => group.length === 1);
    const all = alone ? middle(places) : floor.middle(walk.area);
    const centres = places.map(() => all);
    for (const group of together) {
      if (group.length === 1) continue;
      const own = middle(group.map((one) => places[one]));
      for (const one of group) centres[one] = own;
    }
    return floor.facings(section.start[1], places, together, centres, walk.area);
  }

  function putDown(walk, section, together) {
    const groups = floor.slots(section.start, sized(together), walk.area, walk.data.step);
    const places = byDancer(groups, together, together.map((_, n) => n));
    const ways = facing(walk, section, places, together);
    walk.dancers = places.map((place, n) => floor.dancer(place, ways[n]));
    walk.places = places.map(([x, y], n) => [x, y, floor.rest(ways[n], 360), 1]);
  }

  // everybody to the start of a section, as far as the join lets them, and round to its facing
  function come(walk, part, section, together) {
    let places = here(walk);
    if (part.goes && part.spot === "first place") places = walk.places;
    if (part.goes && part.spot === "new place") places = shortest(walk, section.start, together);
    const ways = facing(walk, section, places, together);
    walk.dancers.forEach((dancer, n) => {
      if (dancer.busy > part.from) return;
      floor.goTo(dancer, places[n], ways[n], part.from, part.begins, part.goes ? part.most ?? Infinity : Infinity);
    });
  }

  function through(walk, part, section, together) {
    const { dancers, data, area } = walk;
    if (section.danced) {
      const mates = [];
      for (const group of together) for (const one of group) mates[one] = group;
      const room = { partner: floor.partners(together), mates, middle: floor.middle(area), size: section.size };
      floor.dance(dancers, section.danced, data.moves, together, part.begins, room);
      return;
    }
    let ends = here(walk);
    if (section.ends === "first") ends = walk.places;
    if (section.ends === "new") ends = shortest(walk, section.end, together);
    const until = part.begins + part.lasts;
    dancers.forEach((dancer, n) => {
      floor.goTo(dancer, ends[n], dancer.facing, part.begins, until, data.running * part.lasts);
    });
  }

  // the names of a section's rows, and the row of each dancer by its number, -1 for none
  function rolesIn({ rows, size }, together) {
    if (!rows) return {};
    const who = [];
    for (const group of together) {
      group.forEach((dancer, n) => { who[dancer] = rows.findIndex(([, places]) => places.includes((n % size) + 1)); });
    }
    return { roles: rows.map(([name]) => name), who };
  }
})();
