// How far apart places are in the hall of the day, for whoever marks them with tape: as the largest team stands there.
(() => {
  const { sums, gettext } = window.danceUnitBank;
  const { floor } = sums;
  const HAND = 0.1; // metres
  const LOOSE = ["scattered", "pairs", "small groups"];

  const nearest = (ones, others) => Math.min(...ones.flatMap((one) => others.filter((other) => other !== one)
    .map((other) => floor.metres(one, other))));
  const told = (metres) => `${(Math.round(metres / HAND) * HAND).toFixed(1).replace(/\.0$/, "")} m`;

  // whether the groups of a section have no places of their own, as build_tools/paths/anywhere.py says
  floor.placesOpen = ({ start: [formation, , , , , columns = null], size }) =>
    size > 1 && columns === null && LOOSE.includes(formation);

  // a line for each of the sections in `letters` whose places are new, are more than a place for each and lie where the
  // unit has them
  floor.tape = (data, room, letters) => {
    const danced = new Set(letters);
    const known = new Map();
    const drawn = (many) => known.get(many) ?? known.set(many, floor.drawnIn(data, room, many)).get(many);
    const seen = new Set();
    return data.parts.flatMap(({ letter, spot, begins }) => {
      if (!letter || !danced.has(letter) || spot !== "new place" || seen.has(letter)) return [];
      const section = data.sections[letter], [formation, , , between = null] = section.start;
      if (formation === "scattered" || (formation === "horseshoe" && between === null) || floor.placesOpen(section)) return [];
      seen.add(letter);
      const words = apart(drawn(floor.dancingIn(room, letter)), letter, begins);
      return words ? [gettext("Part {part}: {metres}.", { part: letter, metres: words })] : [];
    });
  };

  // a pair is no "group" to a teacher
  const inside = (size, metres) => (size === 2 ? gettext("{metres} between partners", metres)
    : gettext("{metres} to the nearest in your group", metres));
  function beside({ size, start: [, , , , , columns = null] }, groups, metres) {
    if (size === 1) return gettext("{metres} to your neighbour", metres);
    if (size !== 2) return gettext("{metres} to the next group", metres);
    const [pairs, rows] = columns === null ? [] : inRows(groups);
    if (!pairs || !rows) return gettext("{metres} to the next pair", metres);
    return pairs === rows ? gettext("{metres} between pairs and between rows", { metres: pairs })
      : gettext("{pairs} between pairs, {rows} between rows", { pairs, rows });
  }

  // how far groups of a grid are from the next beside them and from the next behind; none where there is no such group
  function inRows(groups) {
    const gaps = groups.flatMap((group, n) => groups.slice(n + 1).flatMap((other) => group.flatMap((one) => other.map((next) => ({
      metres: floor.metres(one, next), level: Math.abs(one[1] - next[1]) < Math.abs(one[0] - next[0]),
    })))));
    return [true, false].map((level) => Math.min(...gaps.filter((gap) => gap.level === level).map(({ metres }) => metres)))
      .map((least) => (Number.isFinite(least) ? told(least) : null));
  }

  function apart(paths, letter, moment) {
    const { data, hall: [, deep] } = paths;
    const places = window.danceUnitBank.paths.at(paths, moment);
    let first = 0;
    const groups = floor.groupSizes(places.length, data.sections[letter].size, data.sizes)
      .map((many) => places.slice(first, (first += many)));
    const within = Math.min(...groups.filter((group) => group.length > 1).map((group) => nearest(group, group)));
    const between = Math.min(...groups.flatMap((group, n) =>
      groups.slice(n + 1).map((other) => Math.min(...group.map((one) => nearest([one], other))))));
    const front = Math.min(...places.map(([, y]) => y)) + deep / 2;
    return [
      Number.isFinite(within) && inside(data.sections[letter].size, { metres: told(within) }),
      Number.isFinite(between) && beside(data.sections[letter], groups, { metres: told(between) }),
      gettext("{metres} from the front wall to the first row of children", { metres: told(front) }),
    ].filter(Boolean).join(", ");
  }
})();
