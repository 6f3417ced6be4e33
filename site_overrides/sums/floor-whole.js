// A class put down in a hall and moved through a whole dance: as build_tools/paths/whole.py does it for the printed
// pages and the rules, for the class and the hall of the day. `data` is what for_pages.py writes. Generated classes
// and halls hold the two to the same places.
(() => {
  const bank = window.danceUnitBank;
  const { sums } = bank;
  const { floor } = sums;

  // everybody's legs, to be asked of bank.paths.at, and the parts with who is in which row
  // `spots` is for how many pupils the places are laid where a team stands on those of a larger one
  floor.paths = (data, pupils, hall, spots = 0) => {
    const area = floor.dancingArea(hall, data.lined, borderOf(data));
    const pairs = data.sizes.includes(2) ? classInGroups(pupils, 2, data.sizes) : null;
    const walk = { data, area, hall, spots, pairs, dancers: [], places: [] };
    const parts = data.parts.map((part) => {
      if (!part.letter) return part;
      const section = data.sections[part.letter];
      const together = classInGroups(pupils, section.size, data.sizes);
      const { closer, wanted } = walk.dancers.length ? come(walk, part, section, together) : putDown(walk, section, together);
      through(walk, part, section, together);
      return { ...part, ...rolesIn(section, together), closer, wanted };
    });
    return { first: walk.places, legs: walk.dancers.map((dancer) => dancer.legs), parts, hall, data };
  };

  // the class in groups of neighbours in number, made of whole smaller groups of the dance
  function classInGroups(pupils, size, sizes) {
    let first = 0;
    return sizesOf(pupils, size, sizes).map((many) => Array.from({ length: many }, () => first++));
  }

  const sizesOf = (floor.groupSizes = (pupils, size, sizes) => {
    const usual = sizes.filter((one) => one > 1 && one < size && size % one === 0).at(-1);
    if (usual) return sums.joinedInOrder(sizesOf(pupils, usual, sizes), usual, size);
    return sums.groups(pupils, size).sort((a, b) => (a === size) - (b === size));
  });

  const here = (walk) => walk.dancers.map(({ x, y }) => [x, y]);

  // who has a partner in whom: where all dance alone, those of the pairs that the dance has
  const withWhom = ({ pairs }, together) => (pairs && together.every((group) => group.length === 1) ? pairs : together);

  function facing(walk, standing, places, together) {
    const alone = together.every((group) => group.length === 1);
    const all = alone ? floor.among(places) : floor.middle(walk.area);
    const centres = places.map(() => all);
    for (const group of together) {
      if (group.length === 1) continue;
      const own = floor.among(group.map((one) => places[one]));
      for (const one of group) centres[one] = own;
    }
    return floor.facings(standing, places, withWhom(walk, together), centres, walk.area);
  }

  function putDown(walk, section, together) {
    const { places, closer } = newPlaces(walk, section, together, null);
    const ways = facing(walk, section.start, places, together);
    walk.dancers = places.map((place, n) => floor.dancer(place, ways[n]));
    walk.places = places.map(([x, y], n) => [x, y, floor.rest(ways[n], 360), 1]);
    walk.firstColumns = walk.columns;
    return { closer: floor.closerThanAsked({ places, closer }, section.start, walk.data), wanted: places };
  }

  const borderOf = (data) => Math.max(floor.BORDER, data.wide);

  // each dancer's place as the section says; `at` is where all are, null at the very start
  function newPlaces(walk, section, together, at) {
    const { data, hall } = walk;
    const { start: standing, size } = section;
    const free = standing[8];
    const metres = free && Object.fromEntries(Object.entries(free).map(([side, steps]) => [side, steps * data.step]));
    const area = free ? floor.dancingArea(hall, data.lined, borderOf(data), metres) : walk.area;
    const team = walk.spots ? sizesOf(walk.spots, size, data.sizes).length : 0;
    const dealt = at && floor.dealtAnew(walk.columns, standing, together);
    if (dealt) {
      walk.crossing = [walk.columns, dealt];
      walk.columns = dealt;
      return floor.dealtPlaces(standing, dealt, size, team, area, data.step);
    }
    const found = laidOut(walk, standing, together, size, team, at, area);
    walk.columns = floor.columnsOf(standing, together, found.places);
    return found;
  }

  function laidOut({ data }, standing, together, size, team, at, area) {
    if (team && floor.hasSpots(standing, floor.sized(together))) {
      return floor.onSpots(standing, together, size, team, at, area, data.step, data.columned);
    }
    if (at) return floor.shortest({ area, data }, at, standing, together);
    const { groups, closer } = floor.slots(standing, floor.sized(together), area, data.step);
    return { places: floor.byDancer(groups, together, together.map((_, n) => n)), closer };
  }

  // everybody to the start of a section, as far as the join lets them, and round to its facing
  function come(walk, part, section, together) {
    let places = here(walk);
    walk.crossing = null;
    if (part.goes && part.spot === "first place") places = walk.places;
    if (part.spot === "first place") walk.columns = walk.firstColumns;
    let closer = 1, wanted = null;
    if (part.spot === "new place") {
      const found = newPlaces(walk, section, together, here(walk));
      closer = floor.closerThanAsked(found, section.start, walk.data);
      wanted = found.places;
      if (part.goes) places = found.places;
    }
    const ways = facing(walk, section.start, places, together);
    const lasts = part.begins - part.from, most = part.goes ? part.most ?? Infinity : Infinity;
    const times = walk.crossing ? floor.timesInColumns(walk.crossing, together, here(walk), places) : [];
    walk.dancers.forEach((dancer, n) => {
      if (dancer.busy > part.from) return;
      const [first, last] = times[n] ?? [0, 1];
      floor.goTo(dancer, places[n], ways[n], part.from + lasts * first, part.from + lasts * last, most * (last - first), times[n] && 0);
    });
    return { closer, wanted };
  }

  function through(walk, part, section, together) {
    const { dancers, data, area } = walk;
    if (section.danced) {
      const mates = [];
      for (const group of together) for (const one of group) mates[one] = group;
      const pairs = withWhom(walk, together);
      const [partner, threes] = [floor.partners(pairs), floor.inThrees(pairs)];
      const room = { partner, threes, mates, middle: floor.middle(area), home: here(walk), arm: data.arm, placeOf: placeOf(section) };
      floor.dance(dancers, section.danced, data.moves, together, part.begins, room);
      return;
    }
    let ends = here(walk);
    if (section.ends === "first") ends = walk.places;
    if (section.ends === "new") ends = floor.shortest(walk, here(walk), section.end, together).places;
    walk.columns = null;
    const ways = facing(walk, section.end, ends, together);
    const until = part.begins + part.lasts;
    dancers.forEach((dancer, n) => {
      const from = Math.max(part.begins, dancer.busy);
      if (from < until) floor.goTo(dancer, ends[n], ways[n], from, until, data.running * (until - from));
    });
  }

  // the place that the one at `n` of a group dances: as the data says of a group of its size, else its number, counted
  // round
  const placeOf = ({ size, odd = [] }) => (group, n) =>
    (odd.find((one) => one.length === group.length)?.[n]) ?? (n % size) + 1;

  // the names of a section's rows, and the row of each dancer by its number, -1 for none
  function rolesIn(section, together) {
    const { rows } = section;
    if (!rows) return {};
    const danced = placeOf(section);
    const who = [];
    for (const group of together) {
      group.forEach((dancer, n) => { who[dancer] = rows.findIndex(([, places]) => places.includes(danced(group, n))); });
    }
    return { roles: rows.map(([name]) => name), who };
  }
})();
