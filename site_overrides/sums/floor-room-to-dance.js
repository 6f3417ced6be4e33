// How a class dances in the hall of the day clear of its walls and one another: all at once, with another side as the
// front, with shorter steps, with a few sitting, or in teams. As build_tools/views/dance/room_to_dance.py works it out
// for what is printed.
(() => {
  const bank = window.danceUnitBank;
  const { sums } = bank;
  const { floor } = sums;
  const SHORTER = 0.5;

  const stepping = (data, stride) => stride === 1 ? data
    : { ...data, moves: data.moves.map((move) => move.map((value, at) => (at === 1 || at === 5 ? value * stride : value))) };
  const turnedHall = ([wide, deep]) => [deep, wide];
  const added = (sizes) => sizes.reduce((sum, one) => sum + one, 0);

  // for how many pupils the places of a team are laid; 0 where there are no teams
  const spotsOf = ({ teams, asked }) => (teams.length ? asked[0] : 0);

  // `hall` is [metres along the front, metres deep]; `least` the square metres recommended for each pupil. Gives
  // { found, turned, stride, each, enough, turns, leaving, closer, groups, sharing, tight, spots, lined, hall, pupils }; found is false
  // where none of it is enough; `tight` are the sections that do not take all at once.
  floor.room = (data, pupils, hall, least) => {
    // `turns` are those of the square metres alone, whatever is danced
    const { each, enough, holds } = sums.floorSpace(pupils, hall[0] * hall[1], least);
    const asDrawn = floor.paths(data, pupils, hall);
    const groups = { ...floor.wholeGroups(pupils, data.sizes), columns: floor.byColumn(asDrawn) };
    const strides = data.reach ? [1] : [1, SHORTER]; // steps that reach somebody, or a place, stay as long
    const [all, ...fewer] = floor.sharings(groups);
    const room = {
      found: false, turned: false, stride: 1, each, enough, turns: Math.ceil(pupils / Math.max(1, holds)), hall, pupils, groups, sharing: all, lined: data.lined,
      waiting: data.waiting,
      leaving: oncePerPart(floor.leaving(asDrawn, false)), closer: floor.squeezed(asDrawn),
    };
    const known = new Map();
    const drawn = (many, stride, turned, spots = 0) => {
      const key = `${many} ${stride} ${turned} ${spots}`;
      if (!known.has(key)) known.set(key, floor.paths(stepping(data, stride), many, turned ? turnedHall(hall) : hall, spots));
      return known.get(key);
    };
    // whole groups stand as the dance asks, and a three of which the third is behind; all as they are, clear of the walls
    const behind = Object.values(data.sections).some(({ start }) => start[9] === "behind");
    const hasRoom = ({ sharing, stride, turned }) => {
      const spots = spotsOf(sharing);
      const clear = (many) => !floor.leaving(drawn(many, stride, turned, spots), sharing !== all).length;
      const placed = (many) => !floor.squeezed(drawn(many, stride, turned, spots)).length;
      return sharing.asked.every((many) => placed(many) && clear(many))
        && sharing.dancing.every((many) => clear(many) && (!behind || placed(many)));
    };
    const ways = [all, ...fewer].filter(({ dancing }) => dancing[0] <= holds).flatMap((sharing) => strides.flatMap((stride) =>
      (hall[0] === hall[1] ? [false] : [false, true]).map((turned) => ({ sharing, stride, turned }))));
    const way = ways.find(hasRoom);
    if (way) Object.assign(room, way, { found: true });
    const { sharing, stride, turned } = room;
    const largestFirst = sharing.teams.map(added).sort((a, b) => b - a);
    room.spots = floor.sameSpots(largestFirst.map((many) => drawn(many, stride, turned, spotsOf(sharing))));
    room.tight = tight([all.asked[0], all.dancing[0]].map((many) => drawn(many, stride, turned)), enough);
    return room;
  };

  // the same of the unit's own dance, for a teacher's settings: null while the hall, or the dance, is not known
  let last = null;
  floor.today = (fit) => {
    const data = bank.danceOnFloor;
    const hall = fit && data && (data.halls[fit.space] ?? sums.sidesOf(fit.space));
    if (!hall) return null;
    const key = [fit.dancing, ...hall].join();
    if (last?.key !== key) last = { key, room: floor.room(data, fit.dancing, hall, data.least) };
    return last.room;
  };

  // the places and ways of so many of the class, as the room has them dance: a team on the spots of the largest
  floor.drawnIn = (data, { hall, stride, turned, sharing, pupils: all }, pupils) =>
    floor.paths(stepping(data, stride), pupils, turned ? turnedHall(hall) : hall, pupils < all ? spotsOf(sharing) : 0);

  // how many dance a section at once; of teams, the first
  floor.dancingIn = ({ tight, sharing, pupils }, letter) => (tight.includes(letter) ? sharing.dancing[0] : pupils);

  floor.allAtOnce = ({ sharing: { teams, waiting } }) => !teams.length && !waiting;

  floor.asDrawn = (room) => room.found && floor.allAtOnce(room) && !room.turned && room.stride === 1;

  // the sections that do not take all at once; one that starts where dancers are is danced by as many: the marks they
  // stand on are those of one team
  function tight(whole, enough) {
    const [paths] = whole;
    const near = new Set(whole.flatMap((each) => floor.leaving(each, false)).map(({ letter }) => letter));
    const found = new Set();
    let first = null, before = null;
    for (const { letter, spot, closer } of paths.parts) {
      if (!letter) continue;
      const stood = spot === "new place" ? floor.fine(closer) < floor.FITS : spot === "first place" ? first : before;
      before = stood || near.has(letter) || !enough;
      first ??= before;
      if (before) found.add(letter);
    }
    return [...found];
  }

  // a part that is danced twice is told once, as it is fullest
  function oncePerPart(found) {
    const most = new Map();
    for (const { letter, dancers } of found) most.set(letter, Math.max(dancers, most.get(letter) ?? 0));
    return [...most].map(([letter, dancers]) => ({ letter, dancers }));
  }
})();
