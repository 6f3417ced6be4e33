// What a fit says of the floor; loaded with the dance on it when a lesson is fitted.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const form = (bank.fitForm ||= {});
  const { gettext } = bank;
  const WALL = /\b(?:one|a|the) (?:long|short) wall\b|\b(?:un )?wal (?:hir|fer)\b/i;
  const TAPE = /tape|chalk|tâp|sialc/i;

  // how the dance is danced here, and in which steps of today not all dance at once
  function inThisHall(facts, plan, fit, room, ownWay) {
    const { make } = form;
    const words = bank.sums.floor.roomInWords(room, ownWay);
    if (!room.found || bank.sums.floor.allAtOnce(room)) return [make("p", "", make("strong", words))];
    const told = facts.flatMap((one) => {
      const turn = form.turnOf(one, plan, fit);
      return turn ? [make("li", gettext("{step}: {turns}.", { step: form.nameOf(one.number), turns: turn.words }))] : [];
    });
    if (told.length) {
      return [make("p", "", make("strong", words)),
        make("p", gettext("Today in these steps; in all others everyone works at once.")), make("ul", "", ...told),
        ...longer(facts, plan, room)];
    }
    const all = gettext("Today everyone can dance at once: nothing danced today needs more room than there is.");
    const other = room.tight.length === 1
      ? gettext("For part {part} of the dance: {words}", { part: room.tight[0], words })
      : gettext("For the other parts of the dance: {words}", { words });
    return [make("p", "", make("strong", all)), make("p", other)];
  }

  // what teams do to the minutes: a part that does not take the whole class is danced once for each
  function longer(facts, plan, room) {
    const { sums } = bank;
    const needs = sums.minutesInTeams(facts, room);
    if (needs <= facts.reduce((sum, one) => sum + one.minutes, 0)) return [];
    const said = { teams: sums.numberInWords(room.sharing.teams.length), needs: sums.minutes(needs), have: plan.minutes };
    return [form.make("p", needs <= plan.minutes
      ? gettext("With {teams} teams the lesson needs about {needs} to be danced as often as planned; you have {have}.", said)
      : gettext("For each team to dance as often as planned, the lesson needs about {needs}; you have {have}. So in these steps each team dances as often as its minutes allow, once at least; or give the lesson more than one time.", said))];
  }

  // what the head of the lesson says of it: a teacher found out in a fold
  form.asOften = (facts, plan, room) => {
    const needs = room.found ? bank.sums.minutesInTeams(facts, room) : 0;
    return needs > plan.minutes && gettext("For each team to dance as often as planned, it needs about {minutes}.", { minutes: bank.sums.minutes(needs) });
  };

  // the front of a hall that is danced the other way round, where the page says which wall it is
  form.front = (article, room) => {
    const line = article.querySelector(".part-room p");
    if (!line) return;
    const written = form.asWritten(line);
    if (!room?.found || !room.turned) { line.textContent = written; return; }
    const wall = room.hall[1] < room.hall[0] ? gettext("a short wall") : gettext("a long wall");
    const other = written.replace(WALL, wall);
    line.textContent = other === written ? `${bank.sums.floor.howInWords({ ...room, stride: 1 })} ${written}` : other;
  };

  form.space = (facts, plan, fit, said) => {
    const { make } = form;
    if (!bank.danceOnFloor) return []; // the unit's own comes after this script
    const least = Number(said.least);
    const recommended = gettext("Recommended: {least} m² each; the page on safety says by whom.", { least });
    const metres = bank.sums.squareMetres(fit.space, bank.danceOnFloor.halls);
    if (metres === null) {
      const needs = gettext("{least} m² for each of {pupils} is {metres} m².",
        { least, pupils: fit.dancing, metres: fit.dancing * least });
      const pace = gettext("Pace the floor in big steps, of about 1 metre, and write them above.");
      return [make("h3", gettext("Space")), make("p", `${recommended} ${needs} ${pace}`)];
    }
    const each = bank.sums.floorSpace(fit.dancing, metres, least);
    const parts = [make("h3", gettext("Space"))];
    const room = bank.sums.roomToday(fit);
    const has = gettext("{each} for each pupil, with {pupils} on {metres} m².", { each: each.each, pupils: fit.dancing, metres });
    parts.push(make("p", `${has} ${recommended}`));
    const own = bank.danceOnFloor.own[fit.space];
    const changes = [own && gettext("In this unit: {words}", { words: own }),
      said.room && gettext("In this lesson: {words}", { words: said.room })].filter(Boolean);
    if (room) parts.push(...inThisHall(facts, plan, fit, room, changes.length > 0));
    // the author's own ways are for a classroom, and for a hall in which nothing else is found: two ways at once would be
    // one too many
    if (changes.length && (fit.space === "classroom" || (room ? !room.found : !each.enough))) parts.push(make("ul", "", ...changes.map((words) => make("li", words))));
    if (room) parts.push(...tape(facts, room));
    if (fit.space.endsWith("s")) parts.push(make("p.quiet", gettext("A big step is taken as 1 metre.")));
    else if (!fit.space.endsWith("m")) parts.push(make("p.quiet", `${whose(bank.danceOnFloor.halls)} ${gettext("Yours may differ: pace it to be sure.")}`));
    return parts;
  };

  // where the sizes of a hall and a classroom come from
  function whose({ full, classroom }) {
    return gettext(
      "A hall of {hall} m² and a classroom of {classroom} m² are those of one county’s brief for a primary school (Oxfordshire County Council, 2007).",
      { hall: full[0] * full[1], classroom: classroom[0] * classroom[1] },
    );
  }

  const marked = (facts, room) => bank.sums.floor.tape(bank.danceOnFloor, room, facts.flatMap(({ parts }) => parts));

  // marks help where a step sends pupils to spots, or where one team stands where another stood; else nobody asks for them
  const wanted = (facts, room) => room.sharing.teams.length > 0 || facts.some(({ onSpots }) => onSpots);

  // what the marks are made of, among what to get, where the author has not
  // named it; and how far apart they are, which paper tells among the notes
  form.marks = (article, facts, room) => {
    article.querySelector("[data-marks]")?.remove();
    const list = article.querySelector("ul.get");
    if (!list || !room) return;
    const own = TAPE.test(list.textContent);
    const rows = own || wanted(facts, room) ? marked(facts, room) : [];
    if (!rows.length) return;
    const measures = form.make("span.on-screen", `${gettext("From middle to middle:")} ${rows.join(" ")}`);
    const thing = form.make(own ? "li.on-screen" : "li", own ? `${gettext("Tape for this hall.")} ` : `${gettext("Tape or chalk, for the marks in this hall")}. `, measures);
    thing.dataset.marks = measures.textContent;
    list.append(thing);
  };

  // how far apart the marks are on this floor
  function tape(facts, room) {
    const { make } = form;
    const own = TAPE.test(document.querySelector("ul.get")?.textContent ?? "");
    const rows = own || wanted(facts, room) ? marked(facts, room) : [];
    if (!rows.length) return [];
    return [make("p", "", make("strong", gettext("Tape for this hall.")), ` ${gettext("From middle to middle of two places, to a hand’s breadth:")}`),
      make("ul", "", ...rows.map((words) => make("li", words)))];
  }
})();
