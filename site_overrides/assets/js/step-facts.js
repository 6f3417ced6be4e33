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
      regroups: "regroups" in said,
      shows: "shows" in said ? Number(said.shows) : null,
      canWait: "canWait" in said,
    };
  });
})();
