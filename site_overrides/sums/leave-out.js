// Where a lesson does not fit its slot: which steps to leave out so that one sitting holds the rest.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});

  // The steps that the author lets wait, where the rest holds in `minutes` without them; else none.
  sums.leaveOut = (steps, minutes) => {
    const waiting = steps.filter((step) => step.canWait);
    const kept = steps.filter((step) => !step.canWait);
    return waiting.length && sums.shareMinutes(kept, minutes) ? waiting : [];
  };
})();
