// As build_tools/views/lesson/showing_plan.py: who shows when, so that everybody is seen.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const CHANGE_OVER_SECONDS = 15;
  const TALK_SECONDS = 60;
  const WHERE = "Watchers sit close together along the front, with their feet in, so that the " +
    "dancers face them and have the rest of the floor.";

  sums.talkSeconds = (phase, after) =>
    phase !== "look and talk" && after === "look and talk" ? 0 : TALK_SECONDS;

  sums.showingPlan = (groups, runSeconds, minutes, talk = TALK_SECONDS) => {
    const places = groups.map((_, place) => place);
    const halves = [0, 1].map((half) => places.filter((place) => place % 2 === half));
    const halved = plan(halves.filter((half) => half.length), runSeconds, minutes, talk);
    if (halved.fits || halved.runs.length < 2) return halved;
    const together = plan([places], runSeconds, minutes, talk);
    return together.fits ? together : halved;
  };

  function plan(runs, runSeconds, minutes, talk) {
    const seconds = runs.length * (runSeconds + CHANGE_OVER_SECONDS) + talk;
    return {
      runs,
      atOnce: Math.max(0, ...runs.map((run) => run.length)),
      seconds,
      fits: seconds <= minutes * 60,
      needs: Math.ceil(seconds / 60),
      who: who(runs),
      where: runs.length > 1 ? WHERE : "",
    };
  }

  function who(runs) {
    if (!runs.length) return "Nobody dances.";
    if (runs.length === 1) return "All dance at once, and you watch with those who are not dancing.";
    const [first, second] = runs.map((run) => sums.numberInWords(run.length));
    if (first === "one" && second === "one") {
      return "One group dances and the other watches, then they swap.";
    }
    return `Every other group dances, ${first} at once, and the rest watch. Then they swap, and ` +
      `${second} ${second === "one" ? "dances" : "dance"}.`;
  }
})();
