// Who shows when, so that everybody is seen in the minutes there are. The rule showing-does-not-fit adds
// up the same in build_tools/views/lesson/showing.py; generated cases hold the two to the same minutes.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const { gettext, ngettext } = bank;
  const LET_PASS = 30; // seconds: the sum is a rough one
  const WHERE = gettext(
    "Watchers sit close together along the front, with their feet in, and leave the rest of the floor to the dancers.",
  );

  // How step `index` shows in `minutes`, with this many dancing; null where it shows nothing that is timed. With `teams`,
  // so many of them, one after another; else
  // every other group dances and the rest watch, then they swap, unless the step's words say that groups
  // show in turn. `runs` holds, for each run, the places of the groups that dance; `instead` is what would
  // fit where this does not.
  sums.showing = (facts, index, minutes, pupils, teams = 0) => {
    const { shows, grouping } = facts[index];
    if (!shows) return null;
    // pupils who dance alone show in two halves
    const how = grouping === "alone" && !shows.atOnce ? "half class" : grouping;
    const places = [...sums.classGroups(bank.groupings(facts), how, pupils).keys()];
    const runs = teams ? [Array.from({ length: teams }, (_, n) => [n])] : [halves(places), [places]];
    const ways = runs.map((one) => timed(one, shows));
    const plan = shows.atOnce ? timed(inTurn(places, shows.atOnce), shows) : ways[0];
    const fits = (way) => way.needs <= minutes;
    return {
      ...plan,
      fits: fits(plan),
      instead: fits(plan) || teams ? null : instead(ways.map((way) => fits(way) && way.runs.length < plan.runs.length)),
      who: shows.atOnce && plan.runs.length > 1 ? turnAbout(places, shows.atOnce, grouping)
        : teams ? byTeams(teams) : who(plan.runs, how === "half class"),
      where: plan.runs.length > 1 ? WHERE : "",
    };
  };

  const halves = (places) => [0, 1].map((half) => places.filter((place) => place % 2 === half)).filter((run) => run.length);

  function inTurn(places, atOnce) {
    const runs = [];
    for (let at = 0; at < places.length; at += atOnce) runs.push(places.slice(at, at + atOnce));
    return runs;
  }

  function timed(runs, { each, talk }) {
    const seconds = runs.length * each + talk;
    return { runs, seconds, needs: Math.max(1, Math.ceil((seconds - LET_PASS) / 60)) };
  }

  function instead([half, all]) {
    if (half) return gettext("let half the groups dance at once");
    return all ? gettext("let all dance at once, and watch with those who are not dancing") : null;
  }

  function byTeams(many) {
    return many === 2 ? gettext("Team 1 dances and team 2 watches, then they change.")
      : gettext("One team dances at a time, and the others watch.");
  }

  function turnAbout(places, atOnce, grouping) {
    const [all, some] = [places.length, atOnce].map(sums.numberInWords);
    return grouping === "alone"
      ? gettext("The {all} pupils dance {some} at a time, and the rest watch.", { all, some })
      : gettext("The {all} groups dance {some} at a time, and the rest watch.", { all, some });
  }

  function who(runs, halves) {
    if (!runs.length) return gettext("Nobody dances.");
    if (runs.length === 1) return gettext("All dance at once, and you watch with those who are not dancing.");
    if (halves) return gettext("One half dances and the other watches, then they swap.");
    const [first, second] = runs.map((run) => sums.numberInWords(run.length));
    if (runs.every((run) => run.length === 1)) return gettext("One group dances and the other watches, then they swap.");
    return ngettext(
      "Every other group dances, {first} at once, and the rest watch. Then they swap, and {second} dances.",
      "Every other group dances, {first} at once, and the rest watch. Then they swap, and {second} dance.",
      runs[1].length,
      { first, second },
    );
  }
})();
