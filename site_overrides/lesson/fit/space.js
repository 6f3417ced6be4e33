// What a fit says of the floor; loaded with the dance on it when a lesson is fitted.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const form = (bank.fitForm ||= {});

  // how the dance is danced here, and in which steps of today not all dance at once
  function inThisHall(facts, plan, room) {
    const { make } = form;
    const words = bank.sums.floor.roomInWords(room);
    if (!room.found || bank.sums.floor.allAtOnce(room)) return [make("p", "", make("strong", words))];
    const told = facts.flatMap((one) => {
      const parts = plan.sittings.flat().filter(({ step }) => step === one.number);
      const turn = bank.sums.inTurns(one, Math.min(...parts.map(({ minutes }) => minutes), one.minutes), room);
      return turn ? [make("li", `${form.nameOf(one.number)}: ${turn.words}.`)] : [];
    });
    if (told.length) {
      return [make("p", "", make("strong", words)),
        make("p", "Today in these steps; in all others everyone works at once."), make("ul", "", ...told)];
    }
    const parts = room.tight.length === 1 ? `part ${room.tight[0]}` : "the other parts";
    return [make("p", "", make("strong", "Today everyone can dance at once: nothing danced today needs more room than there is.")),
      make("p", `For ${parts} of the dance: ${words}`)];
  }

  form.space = (facts, plan, fit, said) => {
    const { make } = form;
    const least = Number(said.least);
    const recommended = `Recommended: ${least} m² each; the page on safety says by whom.`;
    const metres = bank.sums.squareMetres(fit.space, JSON.parse(said.halls));
    if (metres === null) {
      const needs = `${least} m² for each of ${fit.dancing} is ${fit.dancing * least} m².`;
      return [make("h3", "Space"), make("p", `${recommended} ${needs} Pace the floor in big steps, of about 1 metre, and write them above.`)];
    }
    const each = bank.sums.floorSpace(fit.dancing, metres, least);
    const parts = [make("h3", "Space")];
    const room = bank.sums.roomToday(fit);
    parts.push(make("p", `${each.each} for each pupil, with ${fit.dancing} on ${metres} m². ${recommended}`));
    if (room) parts.push(...inThisHall(facts, plan, room));
    // the author's own ways are for a hall in which nothing else is found: two ways at once would be one too many
    if (room ? !room.found : !each.enough) {
      const own = { half: said.half, classroom: said.classroom }[fit.space];
      const changes = [...(own ? [`In this unit: ${own}`] : []), ...(said.room ? [`In this lesson: ${said.room}`] : [])];
      if (changes.length) parts.push(make("ul", "", ...changes.map((words) => make("li", words))));
    }
    if (room) parts.push(...tape(room));
    if (fit.space.endsWith("s")) parts.push(make("p.quiet", "A big step is taken as 1 metre."));
    else if (!fit.space.endsWith("m")) parts.push(make("p.quiet", `${said.source} Yours may differ: pace it to be sure.`));
    return parts;
  };

  // how far apart the marks are on this floor
  function tape(room) {
    const { make } = form;
    const rows = bank.sums.floor.tape(bank.danceOnFloor, room);
    if (!rows.length) return [];
    return [make("p", "", make("strong", "Tape for this hall. "), "From middle to middle of two places, to a hand’s breadth:"),
      make("ul", "", ...rows.map((words) => make("li", words)))];
  }
})();
