// As build_tools/views/lesson/catch_up.py: the rest of a lesson that is running late.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});

  sums.catchUp = (steps, minutes) => {
    let kept = steps.map((_, index) => index);
    const planned = () => kept.reduce((sum, index) => sum + steps[index].minutes, 0);
    const least = () => kept.reduce((sum, index) => sum + sums.fittingLeast(steps[index]), 0);
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
    const shares = sums.fit(kept.map((index) => steps[index]), minutes + over) || [];
    const fitted = steps.map(() => 0);
    kept.forEach((index, place) => { fitted[index] = shares[place]; });
    return { minutes: fitted, over };
  };

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
