// As build_tools/views/lesson/class_groups.py: a class in groups near the size the author prefers.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const SIZES = { alone: 1, pairs: 2, threes: 3, fours: 4, fives: 5, sixes: 6 };

  sums.groupSize = (grouping, pupils) => {
    if (grouping === "whole class") return Math.max(1, pupils);
    if (grouping === "half class") return Math.max(1, Math.ceil(pupils / 2));
    return SIZES[grouping];
  };

  sums.groups = (pupils, size) => {
    if (pupils < 1) return [];
    const most = size === 1 ? pupils : Math.max(1, Math.floor(pupils / 2));
    const off = (sizes) => sizes.reduce((sum, one) => sum + Math.abs(one - size), 0);
    let best = even(pupils, most);
    for (let count = most - 1; count > 0; count -= 1) {
      const tried = even(pupils, count);
      if (off(tried) < off(best)) best = tried;
    }
    return best;
  };

  function even(pupils, count) {
    const [least, larger] = [Math.floor(pupils / count), pupils % count];
    return Array.from({ length: count }, (_, index) => (index < larger ? least + 1 : least));
  }
})();
