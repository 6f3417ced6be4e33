// As build_tools/views/lesson/sittings.py: a lesson too long for its slot, in two sittings.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const FRAME = ["warm-up", "recall", "cool-down"];
  const RECAP_MINUTES = 2;

  const total = (sitting, of) => sitting.reduce((sum, step) => sum + of(step), 0);
  const least = (sitting) => total(sitting, sums.fittingLeast);
  const planned = (sitting) => total(sitting, (step) => step.minutes);

  sums.minutes = (many) => `${many} minute${many === 1 ? "" : "s"}`;

  sums.regrouped = (before, grouping) =>
    before !== null && grouping !== before && grouping !== "alone" && grouping !== "whole class";

  // the step that opens a second sitting: dance again what was made
  sums.recap = (grouping) => ({
    number: 0, minutes: RECAP_MINUTES, least: RECAP_MINUTES, phase: "recall",
    grouping, regroups: false, shows: null, canWait: false,
  });

  sums.sittings = (steps, minutes) => {
    const cuts = places(steps).map((after) => cut(steps, after));
    if (!cuts.length) {
      const needed = least(steps);
      return { parts: [], least: 0, sentence: `This lesson needs at least ${sums.minutes(needed)} to teach.` };
    }
    const needs = (pair) => Math.max(least(pair[0]), least(pair[1]));
    const fewest = Math.min(...cuts.map(needs));
    const holding = cuts.filter((pair) => needs(pair) <= minutes);
    if (!holding.length) {
      const sentence = `Two sittings need at least ${sums.minutes(fewest)} to teach each time.`;
      return { parts: [], least: fewest, sentence };
    }
    const uneven = (pair) => Math.abs(planned(pair[0]) - planned(pair[1]));
    const best = holding.reduce((one, other) => (uneven(other) < uneven(one) ? other : one));
    return {
      parts: best.map((sitting) => fitted(sitting, minutes)),
      least: fewest,
      sentence: `Teach it in two sittings of ${sums.minutes(minutes)}.`,
    };
  };

  function places(steps) {
    const talk = steps.map((step) => step.phase).lastIndexOf("look and talk");
    const last = talk < 0 ? steps.length - 1 : talk;
    const inside = (step) => !FRAME.includes(step.phase);
    const found = [];
    for (let after = 1; after <= last; after += 1) {
      if (inside(steps[after - 1]) && steps.slice(after).some(inside)) found.push(after);
    }
    return found;
  }

  function cut(steps, after) {
    const [before, rest] = [steps.slice(0, after), steps.slice(after)];
    const recap = sums.recap(before[after - 1].grouping);
    return [
      regroupedAll([...before, ...rest.filter((step) => step.phase === "cool-down")]),
      regroupedAll([...before.filter((step) => step.phase === "warm-up"), recap, ...rest]),
    ];
  }

  function regroupedAll(steps) {
    return steps.map((step, index) => {
      const before = index ? steps[index - 1].grouping : null;
      return { ...step, regroups: sums.regrouped(before, step.grouping) };
    });
  }

  function fitted(sitting, minutes) {
    const shares = sums.fit(sitting, minutes);
    return sitting.map((step, index) => ({ step: step.number, minutes: shares[index] }));
  }
})();
