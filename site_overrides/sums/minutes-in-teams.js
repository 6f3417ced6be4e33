// How many minutes a lesson needs where the class dances in teams, for each to dance as much as is planned: as
// build_tools/views/lesson/minutes_in_teams.py works it out for what is printed.
(() => {
  const { sums } = (window.danceUnitBank ||= {});
  const SEEN = ["show", "look and talk"];
  const HALVES = 2;

  sums.minutesInTeams = (facts, room) => Math.ceil(facts.reduce((sum, one) => sum + needs(one, room), 0));

  // the steps with the minutes that they want in the hall of the day, where that is known
  sums.wanting = (facts, room) => (room ? facts.map((one) => ({ ...one, wants: needs(one, room) })) : facts);

  function needs(one, room) {
    const { minutes, phase, grouping, parts, shows } = one;
    const teams = room.found ? room.sharing.teams.length : 0;
    if (!teams || !parts.some((letter) => room.tight.includes(letter)) || sums.isAnywhere(one)) return minutes;
    if (shows?.atOnce) return minutes;
    return (grouping === "half class" || shows || SEEN.includes(phase)) ? (minutes * Math.max(teams, HALVES)) / HALVES : minutes * teams;
  }
})();
