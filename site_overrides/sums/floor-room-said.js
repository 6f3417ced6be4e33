// How a class dances in the hall of the day, in the sentences that every page says of it: as
// build_tools/views/words/room_said.py writes them for what is printed.
(() => {
  const { sums, gettext, ngettext, row } = window.danceUnitBank;
  const { floor } = sums;
  const MARK = gettext("Chalk a line one big step from each wall; who reaches it dances on the spot.");
  const CLOSE = gettext("Not even a quarter of the class has the room it needs: dance it on the spot.");
  const OWN_WAY = gettext("Danced as it is drawn, not even a quarter of the class has the room it needs here.");
  const SIDES = 4;

  const capital = (words) => words.charAt(0).toUpperCase() + words.slice(1);
  const pupilsIn = (team) => team.reduce((sum, one) => sum + one, 0);

  // who dances at once, what to change, and why, in a few sentences; `ownWay` is whether the author's own way in such a
  // hall is told beside it, where none is found
  floor.roomInWords = (room, ownWay = false) => {
    const { enough, pupils } = room;
    const small = enough ? "" : gettext("The floor is too small for all to dance at once.");
    if (!room.found) return ownWay ? OWN_WAY : [small || why(room), room.closer.length ? CLOSE : MARK].filter(Boolean).join(" ");
    const how = floor.howInWords(room);
    return (floor.allAtOnce(room)
      ? [gettext("All {pupils} can dance at once.", { pupils }), how, how && why(room)]
      : [floor.sharingInWords(room), how, small || why(room)]
    ).filter(Boolean).join(" ");
  };

  // who dances and who sits, where not all dance at once: the teams, or who sits each time
  floor.sharingInWords = (room) => {
    const { sharing: { teams, waiting, dancing }, groups: { usual }, lined } = room;
    const where = room.waiting.where ?? floor.sitInWords(lined), does = doesInWords(room);
    if (waiting) {
      const many = [...dancing].reverse().map(String);
      const pupils = many.length < 2 ? many[0]
        : gettext("{before} or {last}", { before: many.slice(0, -1).join(", "), last: many.at(-1) });
      return ngettext(
        "{pupils} can dance at once: {groups} sits {where}. {does} Change who sits each time it is danced.",
        "{pupils} can dance at once: {groups} sit {where}. {does} Change who sits each time it is danced.",
        waiting,
        { pupils, groups: sums.groupNamed(usual, waiting), where, does },
      );
    }
    if (!teams.length) return "";
    const named = teams.map((team, n) => floor.teamInWords(n + 1, team)).join(" ");
    return [
      gettext("The class is {teams} teams, the same in every lesson. {named}", { teams: sums.numberInWords(teams.length), named }),
      room.spots === "none" ? gettext("One team at a time dances in the middle of the hall.")
        : gettext("One team at a time dances in the middle of the hall, always on the same spots."),
      room.spots === "but odd groups" && gettext("A group of another size needs marks of its own."),
      ngettext("The other sits {where}.", "The others sit {where}.", teams.length - 1, { where }),
      does,
    ].filter(Boolean).join(" ");
  };

  // what those do who sit: as the unit says, or what goes with the sound of the dance
  function doesInWords({ waiting: { does, counts }, groups: { usual } }) {
    if (does) return capital(does) + (/[.?!”"’]$/.test(does) ? "" : ".");
    if (counts) return gettext("Those who sit count aloud.");
    return usual === 1 ? gettext("Each of them watches one dancer.")
      : gettext("Each of them watches {group}.", { group: sums.groupNamed(usual, 1) });
  }

  floor.teamInWords = (team, sizes) => (Math.max(...sizes) === 1
    ? gettext("Team {team}: {pupils} pupils.", { team, pupils: sizes.length })
    : gettext("Team {team}: {groups}, {pupils}.", { team, groups: sums.groupsInWords(sizes), pupils: pupilsIn(sizes) }));

  // where those sit who do not dance
  floor.sitInWords = (lined) => {
    if (lined.length === SIDES) return gettext("round the edge");
    if (!lined.length) return gettext("in the middle, facing out,");
    if (lined.includes("left")) return gettext("at both ends");
    return lined.includes("back") ? gettext("along the front and the back") : gettext("along the front");
  };

  // what to change, a sentence each
  floor.howInWords = ({ turned, stride, hall: [wide, deep] }) => [
    turned && (deep < wide ? gettext("Take a short wall as the front.") : gettext("Take a long wall as the front.")),
    stride !== 1 && gettext("Make every travelling step half as long."),
  ].filter(Boolean).join(" ");

  // what would be wrong if all danced at once as it is drawn; where all can with another front, or other steps, without that
  function why(room) {
    const { leaving, closer } = room;
    const near = leaving.map(({ letter: part, dancers: number }, n) => n
      ? gettext("{number} in part {part}", { number, part })
      : ngettext("{number} pupil in part {part}", "{number} pupils in part {part}", number, { part }));
    const walls = near.length ? gettext("{pupils} would come too near a wall", { pupils: row(near) }) : "";
    const close = closer.length ? ngettext(
      "pupils in part {parts} would stand closer than the dance asks",
      "pupils in parts {parts} would stand closer than the dance asks",
      closer.length,
      { parts: row(closer) },
    ) : "";
    const wrong = walls && close ? gettext("{walls}, and {close}", { walls, close }) : walls || close;
    return wrong && without(room, wrong);
  }

  function without(room, wrong) {
    const all = room.found && floor.allAtOnce(room), turned = all && room.turned, shorter = all && room.stride !== 1;
    if (turned && shorter) return gettext("Danced as it is drawn, {wrong}.", { wrong });
    if (shorter) return gettext("With whole steps, {wrong}.", { wrong });
    if (!turned) return gettext("If all danced at once as it is drawn, {wrong}.", { wrong });
    return room.hall[1] < room.hall[0] ? gettext("With a long wall as the front, {wrong}.", { wrong })
      : gettext("With a short wall as the front, {wrong}.", { wrong });
  }
})();
