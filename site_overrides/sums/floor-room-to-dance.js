// How a class dances in the hall of the day clear of its walls and one another: all at once, with another side as the
// front, with shorter steps, or in parts of the class. As build_tools/views/dance/room_to_dance.py works it out for what is printed.
(() => {
  const { sums, gettext, ngettext, row } = window.danceUnitBank;
  const { floor } = sums;
  const SHORTER = 0.5;
  const MARK = gettext("Chalk a line one big step from each wall; who reaches it dances on the spot.");
  const CLOSE = gettext("Not even a quarter of the class has the room it needs: dance it on the spot.");
  const WHO = {
    2: gettext("Let half dance while half watch, then swap"),
    3: gettext("Dance in three parts of the class, turn about"),
    4: gettext("Dance in four parts of the class, turn about"),
  };

  const stepping = (data, stride) => stride === 1 ? data
    : { ...data, moves: data.moves.map((move) => move.map((value, at) => (at === 1 || at === 5 ? value * stride : value))) };

  // `hall` is [metres along the front, metres deep]; `least` the square metres recommended for each pupil. Gives
  // { found, turns, turned, stride, each, enough, leaving, hall }; found is false where none of it is enough.
  floor.room = (data, pupils, hall, least) => {
    const space = sums.floorSpace(pupils, hall[0] * hall[1], least);
    const most = space.enough || space.turns > 1 ? sums.MOST_TURNS : 0;
    const drawn = floor.paths(data, pupils, hall);
    const told = {
      found: false, turns: 1, turned: false, stride: 1, each: space.each, enough: space.enough, hall, pupils,
      leaving: oncePerPart(floor.leaving(drawn, false)), closer: floor.squeezed(drawn),
    };
    const strides = data.reach ? [1] : [1, SHORTER]; // steps that reach somebody, or a place, stay as long
    for (let turns = space.turns; turns <= most; turns += 1) {
      const dancing = Math.ceil(pupils / turns);
      for (const [stride, turned] of strides.flatMap((one) => [[one, false], [one, true]])) {
        if (turned && hall[0] === hall[1]) continue;
        const asDrawn = dancing === pupils && stride === 1 && !turned;
        const paths = asDrawn ? drawn : floor.paths(stepping(data, stride), dancing, turned ? [hall[1], hall[0]] : hall);
        if (!floor.squeezed(paths).length && !floor.leaving(paths, turns > 1).length) {
          return { ...told, found: true, turns, turned, stride };
        }
      }
    }
    return told;
  };

  floor.asDrawn = ({ found, turns, turned, stride }) => found && turns === 1 && !turned && stride === 1;

  // the same as one or two sentences
  floor.roomInWords = ({ found, turns, turned, stride, enough, leaving, closer, hall: [wide, deep], pupils }) => {
    const walls = why(leaving, closer);
    const close = enough ? "" : gettext("The floor is too small for all to dance at once.");
    if (!found) {
      return [close || walls, closer.length ? CLOSE : MARK].filter(Boolean).join(" ");
    }
    const who = WHO[turns] ?? gettext("All {pupils} can dance at once", { pupils });
    const how = [
      turned && (deep < wide ? gettext("with a short wall as the front") : gettext("with a long wall as the front")),
      stride !== 1 && gettext("with every travelling step half as long"),
    ].filter(Boolean);
    const opening = `${[who, row(how)].filter(Boolean).join(", ")}.`;
    return [opening, turns > 1 && !enough ? close : how.length || turns > 1 ? walls : ""].filter(Boolean).join(" ");
  };

  // what would be wrong if all danced at once as it is drawn
  function why(leaving, closer) {
    const near = leaving.map(({ letter: part, dancers: number }, n) => n
      ? gettext("{number} in part {part}", { number, part })
      : ngettext("{number} pupil in part {part}", "{number} pupils in part {part}", number, { part }));
    const found = near.length ? [gettext("{pupils} would come too near a wall", { pupils: row(near) })] : [];
    if (closer.length) {
      found.push(ngettext(
        "pupils in part {parts} would stand closer than the dance asks",
        "pupils in parts {parts} would stand closer than the dance asks",
        closer.length,
        { parts: row(closer) },
      ));
    }
    return found.length ? gettext("If all danced at once as it is drawn, {what}.", { what: row(found) }) : "";
  }

  // a part that is danced twice is told once, as it is fullest
  function oncePerPart(found) {
    const most = new Map();
    for (const { letter, dancers } of found) most.set(letter, Math.max(dancers, most.get(letter) ?? 0));
    return [...most].map(([letter, dancers]) => ({ letter, dancers }));
  }
})();
