// Who dances a step at once, in the hall of the day: all; nearly all; or one team after another. `room` is that of
// floor.room, null while the hall is not known. A step is in turns only if what it dances in its place does not take
// the whole class; a warm-up, or what is tried out anywhere, never while there are the square metres for all.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const { gettext, ngettext } = bank;
  const MOVING = ["warm-up", "cool-down"];
  const ANYWHERE = "explore"; // unless it is on the spots of the dance
  const SEEN = ["show", "look and talk"];
  const AS_ONE = ["whole class", "half class"];
  const TOLD = /\b(?:teams?|tîm|timau)\b/i;
  const MADE = /^(?:find|turn to|make|get into|face|dewch o hyd|trowch at|gwnewch)\b[^.]*\.\s+/i;
  const SAID = /“([^”]*)”\s*(.*)$/s;
  const TEAMS = {
    2: gettext("team 1, then team 2"),
    3: gettext("team 1, then 2, then 3"),
    4: gettext("team 1, then 2, then 3, then 4"),
  };
  const PART = { 2: gettext("half at a time"), 3: gettext("a third at a time") };

  // { words, teams, each }: what is said beside the groups, whether it is by teams, and the whole minutes of each turn,
  // 0 where none are told; null where all dance at once
  sums.inTurns = (one, minutes, room) => {
    if (!room?.found || sums.floor.allAtOnce(room)) return null;
    const { teams } = room.sharing;
    const tight = one.parts.some((letter) => room.tight.includes(letter));
    if (sums.isAnywhere(one)) return moving(one, minutes, room, tight);
    const halved = one.grouping === "half class" || one.shows || SEEN.includes(one.phase);
    if (one.shows?.atOnce) return null;
    // a step that says itself who sits has half of them at a time: as many as one of two teams, and where these have the
    // same spots two who share one might dance at once
    if (tight && one.halves === "as told" && teams.length === 2 && room.spots === "none") return { words: PART[2], teams: false, each: 0 };
    if (halved && !teams.length) {
      return tight && one.grouping === "half class" && !one.shows
        ? { words: gettext("if all dance it at once, {turns}", { turns: turns(room) }), teams: false, each: 0, beside: true } : null;
    }
    if (!tight && !(teams.length === 2 && one.grouping === "half class")) return null;
    const each = teams.length && !SEEN.includes(one.phase) && !one.shows ? Math.floor(minutes / teams.length) : 0;
    return { words: teams.length ? long(turns(room), each, one) : turns(room), teams: teams.length > 0, each };
  };

  // a step in which pupils are on no spots of the dance
  sums.isAnywhere = (one) => !one.parts.length || MOVING.includes(one.phase) || (one.phase === ANYWHERE && !one.onSpots);

  // where the metres do not reach, those who wait move on the spot, so that nobody grows cold
  function moving(one, minutes, room, tight) {
    const { teams } = room.sharing;
    if (room.enough) return tight ? { words: gettext("all at once, each in a space"), teams: false, each: 0 } : null;
    if (!one.travels) return null;
    const each = Math.floor(minutes / room.turns);
    const by = teams.length === room.turns;
    const who = by ? turns(room) : PART[room.turns] ?? gettext("a quarter at a time");
    return { words: gettext("{turns}, the rest on the spot", { turns: long(who, each, one) }), teams: by, each };
  }

  // groups as a page says them, with the turns beside; the whole class is not together where it is in turns
  sums.groupsInTurns = (groups, one, turn) => {
    if (!turn) return groups;
    if (!AS_ONE.includes(one.grouping) || turn.beside) return `${groups}; ${turn.words}`;
    return turn.words.charAt(0).toUpperCase() + turn.words.slice(1);
  };

  // what is said to get into groups: which team sits, where the others dance or go to their spots; not where the words
  // tell of teams, nor where there are no groups yet of which a team could be
  sums.intoToday = (words, facts, one, turn, room) => {
    if (!words || !turn?.teams || TOLD.test(words)) return words;
    const where = room.waiting.where ?? sums.floor.sitInWords(room.lined), others = room.sharing.teams.length - 1;
    if (one.shows || SEEN.includes(one.phase) || one.grouping === "half class") {
      return ngettext(
        "“Team 2, sit {where}. Team 1, dance. Then change.”",
        "“All but team 1, sit {where}. Team 1, dance. Then the next team.”",
        others,
        { where },
      );
    }
    const said = SAID.exec(words);
    if (!said || (AS_ONE.includes(one.grouping) && !one.onSpots)) return words;
    if (!formed(facts, one)) return one.onSpots ? firstTeams(said, room, where) : words;
    return ngettext(
      "“Team 2, sit {where}. Team 1: {words}” Then change. {more}",
      "“All but team 1, sit {where}. Team 1: {words}” Then the next team. {more}",
      others,
      { where, words: within(said[1]), more: said[2] },
    ).trim();
  };

  // where the groups are made in this step: once they are, which of them are team 1
  function firstTeams([, words, more], { sharing: { teams } }, where) {
    const made = MADE.exec(words) ?? ["", ""];
    const going = words.slice(made[0].length);
    return gettext("“{made}The {groups} that I point to are team 1: {words} Everyone else, sit {where}.” Then change. {more}",
      { made: made[0], groups: sums.groupsInWords(teams[0]), words: within(going), where, more }).trim();
  }

  // whether pupils have been in these groups before, in this lesson or an earlier one
  function formed(facts, one) {
    const before = facts.slice(0, one.number - 1);
    const known = [...(facts[0].before ?? []), ...before.flatMap(({ grouping, stands }) => [grouping, stands])];
    return AS_ONE.includes(one.stands ?? one.grouping) ? known.some((name) => name && !AS_ONE.includes(name) && name !== "alone")
      : known.includes(one.stands ?? one.grouping);
  }

  const within = (words) => (/^I\b/.test(words) ? words : words.charAt(0).toLowerCase() + words.slice(1));

  function turns({ sharing: { teams, waiting, dancing }, groups }) {
    if (waiting) {
      const [least, most] = [dancing.at(-1), dancing[0]];
      return ngettext(
        "{pupils} at once, {groups} sits, others each time",
        "{pupils} at once, {groups} sit, others each time",
        waiting,
        {
          pupils: least === most ? most : gettext("{before} or {last}", { before: least, last: most }),
          groups: sums.groupNamed(groups.usual, waiting),
        },
      );
    }
    return TEAMS[teams.length];
  }

  function long(turn, each, { phase, shows }) {
    if (SEEN.includes(phase) || shows) return turn;
    return each ? gettext("{turns}, {minutes} each", { turns: turn, minutes: sums.minutes(each) })
      : gettext("{turns}, once each", { turns: turn });
  }

  // a teacher had sent team 2 to sit in the warm-up: in which steps there are teams, where not in all
  function inWhichSteps(turns) {
    const steps = turns.flatMap((turn, index) => (turn?.teams ? [String(index + 1)] : []));
    return steps.length && steps.length < turns.length && ngettext(
      "In teams: step {steps}. In all others everyone works at once.",
      "In teams: steps {steps}. In all others everyone works at once.",
      steps.length,
      { steps: bank.row(steps) },
    );
  }

  // what to know before the lesson: the teams, or who sits, and how the hall is used; "" where all is as it is drawn.
  // `ownWay` is whether the author's way in a small hall stands below
  sums.hallToday = (facts, room, ownWay = false) => {
    const placed = facts.some((one) => one.parts.length);
    if (!room?.found) return room && placed ? sums.floor.roomInWords(room, ownWay) : "";
    const turns = facts.map((one) => sums.inTurns(one, one.minutes, room));
    const how = (placed || facts.some((one) => one.travels)) && sums.floor.howInWords(room);
    return [turns.some(Boolean) && sums.floor.sharingInWords(room), inWhichSteps(turns), how].filter(Boolean).join(" ");
  };
})();
