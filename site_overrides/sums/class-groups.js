// A class in groups near the size the author prefers. As build_tools/views/lesson/class_groups.py, from
// which the rules and the printed pages have theirs; generated cases hold the two to the same groups.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const SIZES = { alone: 1, pairs: 2, threes: 3, fours: 4, fives: 5, sixes: 6 };

  const added = (sizes) => sizes.reduce((sum, one) => sum + one, 0);
  const off = (sizes, size) => sizes.map((one) => Math.abs(one - size));

  sums.groupSize = (grouping, pupils) => {
    if (grouping === "whole class") return Math.max(1, pupils);
    if (grouping === "half class") return Math.max(1, Math.ceil(pupils / 2));
    return SIZES[grouping];
  };

  // the sizes of the groups, the larger first
  sums.groups = (pupils, size) => {
    if (pupils < 1) return [];
    const most = size === 1 ? pupils : Math.max(1, Math.floor(pupils / 2));
    let best = even(pupils, most);
    for (let count = most - 1; count > 0; count -= 1) {
      const tried = even(pupils, count);
      if (added(off(tried, size)) < added(off(best, size))) best = tried;
    }
    return best;
  };

  // of what `grouping` is made in a lesson whose steps are grouped so: pairs, if they join; null if of nothing
  sums.joinedFrom = (groupings, grouping) => {
    let last = null;
    for (const one of groupings) {
      if (one === grouping) return last && SIZES[last] < SIZES[one] && SIZES[one] % SIZES[last] === 0 ? last : null;
      if (one !== "alone" && one in SIZES) last = one;
    }
    return null;
  };

  // the groups of a lesson whose steps are grouped so: whole pairs where pairs join, whole threes likewise
  sums.classGroups = (groupings, grouping, pupils) => {
    const size = sums.groupSize(grouping, pupils);
    const from = sums.joinedFrom(groupings, grouping);
    if (!from) return sums.groups(pupils, size);
    return sums.joinedInOrder(sums.groups(pupils, SIZES[from]), SIZES[from], size).sort((a, b) => b - a);
  };

  // so many teams of whole groups, as even as they go; the one with more pupils first
  sums.teamsOf = (sizes, many) => {
    const teams = Array.from({ length: many }, () => []);
    for (const size of [...sizes].sort((a, b) => b - a)) {
      teams.reduce((least, team) => (added(team) < added(least) ? team : least)).push(size);
    }
    return teams.sort((a, b) => added(b) - added(a));
  };

  // the two halves of a class, no group of which is cut: those of a lesson whose steps are grouped so, the largest
  sums.halves = (groupings, pupils) => {
    const known = groupings.filter((one) => one in SIZES).sort((a, b) => SIZES[b] - SIZES[a]);
    return sums.teamsOf(sums.classGroups(groupings, known[0] ?? "alone", pupils), 2).filter((half) => half.length);
  };

  // groups of `size` made of whole `parts`, of which one at most is of another size than `usual`; it comes first
  sums.joinedInOrder = (parts, usual, size) => {
    const odd = added(parts.filter((one) => one !== usual));
    const rest = parts.filter((one) => one === usual).length;
    const together = (many) => sums.groups(many, size / usual).map((count) => count * usual);
    if (!odd) return together(rest);
    let best = null;
    for (let beside = 0; beside <= rest; beside += 1) {
      const tried = [odd + beside * usual, ...together(rest - beside)];
      if (!best || nearer(tried, best, size)) best = tried;
    }
    return best;
  };

  function even(pupils, count) {
    const [least, larger] = [Math.floor(pupils / count), pupils % count];
    return Array.from({ length: count }, (_, index) => (index < larger ? least + 1 : least));
  }

  function nearer(one, other, size) {
    const [a, b] = [off(one, size), off(other, size)];
    if (added(a) !== added(b)) return added(a) < added(b);
    if (Math.max(...a) !== Math.max(...b)) return Math.max(...a) < Math.max(...b);
    return one.length > other.length;
  }
})();
