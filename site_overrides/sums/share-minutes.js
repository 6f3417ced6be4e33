// A lesson fitted to the minutes there are: whole minutes for each step, so that all keep their share.
// Steps are as bank.stepFacts gives them; `before` is how pupils are grouped before the first of them.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const FRAME = ["warm-up", "cool-down"];
  const NOBODY_TO_FIND = ["alone", "whole class"];
  const GETTING_INTO_GROUPS = 0.5; // minutes; common practice, no source

  // Whether pupils have others to find, or sides to take, between one step and the next. Alone, or all
  // together, after pairs they have not: each walks to a space, and the task starts on the way.
  sums.regrouped = (before, grouping) =>
    before !== null && grouping !== before && !NOBODY_TO_FIND.includes(grouping);

  // The fewest whole minutes of each step. Getting into groups takes half a minute, so the next time is
  // held by the minute of the one before. Never more than is planned: a lesson as planned always fits.
  sums.leasts = (steps, before = null) => {
    let owed = 0;
    return steps.map((step, index) => {
      const least = Math.min(step.minutes, step.least);
      if (!sums.regrouped(index ? steps[index - 1].grouping : before, step.grouping)) return least;
      owed += GETTING_INTO_GROUPS;
      const more = Math.min(step.minutes - least, Math.ceil(owed));
      owed = Math.min(0, owed - more);
      return least + more;
    });
  };

  // The minutes of each step, adding up to `minutes`; null where the leasts are more. No other shares have
  // a lower sum of m x m / wanted: each minute beyond the leasts goes where it raises that sum least, by
  // (2m + 1) / wanted, to the earlier step in a tie. A step wants what is planned, or `wants`, where it is
  // danced in turns. Talk does not grow past what pupils can sit for, nor warming up and cooling down past
  // what is planned: three breaths are as long in a long lesson, and a dance is made in what is left over.
  sums.shareMinutes = (steps, minutes, before = null) => {
    const shares = sums.leasts(steps, before);
    const talks = stretches(steps, shares);
    let spare = minutes - shares.reduce((sum, share) => sum + share, 0);
    if (spare < 0 || !shares.length) return null;
    for (; spare > 0; spare -= 1) {
      const rises = (index, best) =>
        (2 * shares[index] + 1) * wanted(steps[best]) < (2 * shares[best] + 1) * wanted(steps[index]);
      const every = [...shares.keys()];
      const unseated = every.filter((index) => !(talks[index]?.minutes >= talks[index]?.most));
      const danced = unseated.filter((index) => !FRAME.includes(steps[index].phase) || shares[index] < steps[index].minutes);
      const places = [danced, unseated, every].find((some) => some.length);
      const best = places.reduce((found, index) => (rises(index, found) ? index : found));
      shares[best] += 1;
      if (talks[best]) talks[best].minutes += 1;
    }
    return shares;
  };

  const wanted = ({ minutes, wants }) => wants ?? minutes;

  // For each step the stretch of sitting and talking it is in, or null: its minutes, and the most it may
  // have, which is what pupils of their age can sit for, or what the author plans where that is more.
  function stretches(steps, shares) {
    const found = [];
    steps.forEach((step, index) => {
      if (step.sits === null) return found.push(null);
      const talk = found.at(-1) ?? { minutes: 0, planned: 0, most: 0 };
      talk.minutes += shares[index];
      talk.planned += step.minutes;
      talk.most = Math.max(step.sits, talk.planned);
      return found.push(talk);
    });
    return found;
  }
})();
