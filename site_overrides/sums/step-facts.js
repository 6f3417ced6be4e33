// What the page says of its steps, as the sums take it: reads the attributes of [data-step].
(() => {
  const bank = (window.danceUnitBank ||= {});

  bank.stepFacts = (root) => [...root.querySelectorAll("[data-step][data-minutes]")].map((element) => {
    const said = element.dataset;
    return {
      number: Number(said.step),
      minutes: Number(said.minutes),
      least: Number(said.least),
      phase: said.phase,
      grouping: said.grouping,
      sits: "sits" in said ? Number(said.sits) : null,
      shows: shows(said),
      canWait: "canWait" in said,
      travels: "travels" in said,
      parts: said.parts ? said.parts.split(" ") : [],
      onSpots: "onSpots" in said,
      stands: said.stands ?? null,
      halves: said.halves ?? null,
      ...("before" in said && { before: said.before.split(" ") }),
    };
  });

  // the groupings of a lesson's steps, after those that earlier lessons made
  bank.groupings = (facts) => facts.flatMap((one) => [...(one.before || []), one.grouping]);

  // in whole seconds: what each run takes with its change over, and the talk
  function shows(said) {
    if (!("shows" in said)) return null;
    return { each: Number(said.shows), talk: Number(said.talk), atOnce: "atOnce" in said ? Number(said.atOnce) : null };
  }
})();
