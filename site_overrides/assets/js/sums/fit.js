// As build_tools/views/lesson/fit.py: whole minutes for each step; a tie goes to the earlier one.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});

  sums.fittingLeast = (step) => Math.min(step.minutes, step.least + (step.regroups ? 1 : 0));

  sums.fit = (steps, minutes) => {
    const shares = steps.map(sums.fittingLeast);
    let spare = minutes - shares.reduce((sum, share) => sum + share, 0);
    if (spare < 0 || !shares.length) return null;
    for (; spare > 0; spare -= 1) {
      let best = 0;
      for (let index = 1; index < steps.length; index += 1) {
        const here = (2 * shares[index] + 1) * steps[best].minutes;
        if (here < (2 * shares[best] + 1) * steps[index].minutes) best = index;
      }
      shares[best] += 1;
    }
    return shares;
  };
})();
