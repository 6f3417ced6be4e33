// The teams of a class that dance in turn, of whole groups, and how many groups sit where nearly all can dance at once:
// for the class of the day as build_tools/views/dance/teams.py has it; generated classes hold the two together.
(() => {
  const { sums } = window.danceUnitBank;
  const { floor } = sums;
  const MOST_TURNS = 4, MOST_WAITING = 4; // as teams.py says

  const added = (sizes) => sizes.reduce((sum, one) => sum + one, 0);
  const falling = (numbers) => [...new Set(numbers)].sort((a, b) => b - a);

  // the groups that stay together: the largest of the dance of which there are a few
  floor.wholeGroups = (pupils, sizes) => {
    const known = falling([...sizes, 1]);
    for (const usual of known) {
      const found = floor.groupSizes(pupils, usual, [...known].reverse());
      if (found.length >= MOST_TURNS || usual === 1) return { usual, sizes: [...found].sort((a, b) => b - a), columns: [] };
    }
    return null;
  };

  // all at once; nearly all, as few as may be sitting; then two teams, three and four
  floor.sharings = (whole) => {
    const { sizes, columns } = whole;
    const pupils = added(sizes);
    const ways = [{ teams: [], waiting: 0, dancing: [pupils], asked: asked(whole, [[sizes.length, pupils]]) }];
    for (let waiting = 1; waiting <= sizes.length && !columns.length; waiting += 1) {
      const sitting = sumsOf(sizes, waiting);
      if (sitting.at(-1) * MOST_WAITING > pupils) break;
      const dancing = sitting.map((many) => pupils - many);
      ways.push({ teams: [], waiting, dancing, asked: asked(whole, dancing.map((one) => [sizes.length - waiting, one])) });
    }
    for (let many = 2; many <= Math.min(MOST_TURNS, (columns.length ? columns : sizes).length); many += 1) {
      const teams = columns.length ? neighbours(columns, many) : sums.teamsOf(sizes, many);
      const dancing = falling(teams.map(added));
      ways.push({ teams, waiting: 0, dancing, asked: asked(whole, teams.map((team) => [team.length, added(team)])) });
    }
    return ways;
  };

  // the two halves of a class as the unit has its teams: of columns that stand side by side, from the left; else of whole
  // groups, the larger half first. `groupings` are those of the lesson.
  floor.halves = (data, groupings, pupils) => {
    if (kept?.data !== data || kept.pupils !== pupils) {
      kept = { data, pupils, columns: floor.byColumn(floor.paths(data, pupils, data.hall)) };
    }
    return kept.columns.length > 1 ? neighbours(kept.columns, 2) : sums.halves(groupings, pupils);
  };
  let kept = null;

  function asked({ usual, sizes }, dancing) {
    const near = sizes.every((size) => Math.abs(size - usual) <= 1);
    return falling(dancing.map(([groups, pupils]) => (near ? groups * usual : pupils)));
  }

  // so many teams of columns that stand side by side, from the left
  function neighbours(columns, many) {
    const least = Math.floor(columns.length / many), more = columns.length % many;
    const end = (n) => least * n + Math.min(n, more);
    return Array.from({ length: many }, (_, n) => columns.slice(end(n), end(n + 1)).flat());
  }

  // how many pupils so many of the groups may be, each sum once, the smallest first
  function sumsOf(sizes, many) {
    let found = [[0, 0]];
    for (const size of new Set(sizes)) {
      const there = sizes.filter((one) => one === size).length;
      found = found.flatMap(([taken, total]) => Array.from({ length: Math.min(there, many - taken) + 1 },
        (_, more) => [taken + more, total + more * size]));
    }
    return falling(found.filter(([taken]) => taken === many).map(([, total]) => total)).reverse();
  }
})();
