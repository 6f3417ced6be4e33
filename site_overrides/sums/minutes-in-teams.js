// How many minutes a lesson needs where the class dances in teams, for each to dance as much as is planned: as
// build_tools/views/lesson/minutes_in_teams.py works it out for what is printed.
(() => {
  const { sums } = (window.danceUnitBank ||= {});
  const MOVING = ["warm-up", "cool-down", "explore"];
  const MAKING = ["make", "develop"];
  const SEEN = ["show", "look and talk"];
  const DANCED_ONCE = 1; // minutes in which a team dances once what all have made; common practice, no source
  const HALVES = 2;

  sums.minutesInTeams = (facts, room) => Math.ceil(facts.reduce((sum, one) => sum + needs(one, room), 0));

  function needs({ minutes, phase, grouping, parts, shows }, room) {
    const teams = room.found ? room.sharing.teams.length : 0;
    if (!teams || !parts.some((letter) => room.tight.includes(letter)) || MOVING.includes(phase)) return minutes;
    if (shows?.atOnce) return minutes;
    if (grouping === "half class" || shows || SEEN.includes(phase)) return (minutes * Math.max(teams, HALVES)) / HALVES;
    return MAKING.includes(phase) ? minutes + DANCED_ONCE * (teams - 1) : minutes * teams;
  }
})();
