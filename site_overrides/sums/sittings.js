// A lesson too long for its slot, taught in two sittings of the same length.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const { gettext, ngettext } = bank;
  const FRAME = ["warm-up", "recall", "cool-down"];
  const RECAP = 0; // the number of the recap, which is no step of the lesson
  const RECAP_MINUTES = 2;

  const added = (minutes) => minutes.reduce((sum, one) => sum + one, 0);
  const least = (sitting) => added(sums.leasts(sitting));
  const planned = (sitting) => added(sitting.map((step) => step.minutes));

  sums.minutes = (many) => ngettext("{number} minute", "{number} minutes", many);

  // the step that opens a second sitting: dance again what was made, in the groups it was made in
  sums.recap = (grouping) => ({
    number: RECAP, minutes: RECAP_MINUTES, least: RECAP_MINUTES, phase: "recall",
    grouping, sits: null, shows: null, canWait: false,
  });

  // It is cut where the planned minutes of the two are most even, earlier in a tie, among the places where
  // both hold the least of every step. Each has the lesson's warm-up and cool-down; the first its recall,
  // the second a recap. The last looking and talking is in the second. `parts` is empty where two sittings
  // of `minutes` cannot hold the lesson; `least` is what they need each time, 0 where nothing can be cut.
  sums.sittings = (steps, minutes) => {
    const cuts = places(steps).map((after) => cut(steps, after));
    if (!cuts.length) {
      const needed = least(steps);
      const sentence = gettext("This lesson needs at least {minutes} to teach.", { minutes: sums.minutes(needed) });
      return { parts: [], least: 0, sentence };
    }
    const needs = (pair) => Math.max(least(pair[0]), least(pair[1]));
    const fewest = Math.min(...cuts.map(needs));
    const holding = cuts.filter((pair) => needs(pair) <= minutes);
    if (!holding.length) {
      const needed = { minutes: sums.minutes(fewest) };
      const sentence = gettext("Two sittings need at least {minutes} to teach each time.", needed);
      return { parts: [], least: fewest, sentence };
    }
    const uneven = (pair) => Math.abs(planned(pair[0]) - planned(pair[1]));
    const best = holding.reduce((one, other) => (uneven(other) < uneven(one) ? other : one));
    return {
      parts: best.map((sitting) => fitted(sitting, minutes)),
      least: fewest,
      sentence: gettext("Teach it in two sittings of {minutes}.", { minutes: sums.minutes(minutes) }),
    };
  };

  // after how many steps the lesson can be cut
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
    return [
      [...before, ...rest.filter((step) => step.phase === "cool-down")],
      [...before.filter((step) => step.phase === "warm-up"), sums.recap(before[after - 1].grouping), ...rest],
    ];
  }

  function fitted(sitting, minutes) {
    const shares = sums.shareMinutes(sitting, minutes);
    return sitting.map((step, index) => ({ step: step.number, minutes: shares[index] }));
  }
})();
