// The rest of a lesson that is running late, brought to its end in the minutes left.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});

  // A rest that is not late keeps its planned minutes. A step that can wait is left out once the class is
  // as late as its least, or where the rest does not hold otherwise; the earlier first. Then others are
  // left out, from the last backwards, but never the warm-up, the cool-down or the last looking and
  // talking, which keep their least. A step left out has 0 minutes; `over` is how late it ends even so.
  sums.catchUp = (steps, minutes, before = null) => {
    let kept = steps.map((_, index) => index);
    const those = () => kept.map((index) => steps[index]);
    const planned = () => added(those().map((step) => step.minutes));
    const least = () => added(sums.leasts(those(), before));
    const leave = (index) => { kept = kept.filter((other) => other !== index); };
    if (planned() <= minutes) return { minutes: steps.map((step) => step.minutes), over: 0 };

    const needed = neededOf(steps);
    steps.forEach((step, index) => {
      if (!step.canWait || needed.has(index)) return;
      if (planned() - minutes >= step.least || least() > minutes) leave(index);
    });
    for (let index = steps.length - 1; index >= 0 && least() > minutes; index -= 1) {
      if (!needed.has(index)) leave(index);
    }
    const over = Math.max(0, least() - minutes);
    const shares = sums.shareMinutes(those(), minutes + over, before) || [];
    const fitted = steps.map(() => 0);
    kept.forEach((index, place) => { fitted[index] = shares[place]; });
    return { minutes: fitted, over };
  };

  const added = (minutes) => minutes.reduce((sum, one) => sum + one, 0);

  function neededOf(steps) {
    const phases = steps.map((step) => step.phase);
    const needed = new Set();
    phases.forEach((phase, index) => {
      if (phase === "warm-up" || phase === "cool-down") needed.add(index);
    });
    if (phases.includes("look and talk")) needed.add(phases.lastIndexOf("look and talk"));
    return needed;
  }
})();
