// What a fit says of the floor; loaded with the dance on it when a lesson is fitted.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const form = (bank.fitForm ||= {});

  // what is enough in the hall of the fit; null while nothing is known of the hall, or of the dance
  form.room = (fit, said) => {
    const [halls, least] = [JSON.parse(said.halls), Number(said.least)];
    const hall = fit && (halls[fit.space] ?? bank.sums.sidesOf(fit.space));
    return hall && bank.danceOnFloor ? bank.sums.floor.room(bank.danceOnFloor, fit.dancing, hall, least) : null;
  };

  function inTurns(facts, plan, turns) {
    const { numberInWords, minutes: long } = bank.sums;
    const travelling = facts.filter((one) => one.travels);
    if (turns < 2 || !travelling.length) return "";
    const told = travelling.map((one) => {
      const has = plan.sittings.flat().find(({ step }) => step === one.number)?.minutes ?? one.minutes;
      return `${form.nameOf(one.number)}, about ${long(Math.max(1, Math.round(has / turns)))} each`;
    });
    return `These steps run in ${numberInWords(turns)} turns, and those who wait count aloud and watch: ${told.join("; ")}.`;
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
    const floor = bank.sums.floorSpace(fit.dancing, metres, least);
    const parts = [make("h3", "Space")];
    const room = form.room(fit, said);
    parts.push(make("p", `${floor.each} for each pupil, with ${fit.dancing} on ${metres} m². ${recommended}`));
    if (room) parts.push(make("p", "", make("strong", bank.sums.floor.roomInWords(room))));
    const turns = inTurns(facts, plan, form.turns(fit, said));
    const asDrawn = room && bank.sums.floor.asDrawn(room);
    if (!(asDrawn ?? floor.enough)) {
      const own = { half: said.half, classroom: said.classroom }[fit.space];
      const changes = [...(turns ? [turns] : []), ...(own ? [`In this unit: ${own}`] : []), ...(said.room ? [`${turns ? "In" : "Or, in"} this lesson: ${said.room}`] : [])];
      if (changes.length) parts.push(make("ul", "", ...changes.map((words) => make("li", words))));
    }
    if (fit.space.endsWith("s")) parts.push(make("p.quiet", "A big step is taken as 1 metre."));
    else if (!fit.space.endsWith("m")) parts.push(make("p.quiet", `${said.source} Yours may differ: pace it to be sure.`));
    return parts;
  };
})();
