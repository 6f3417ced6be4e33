// Where a section starts: everybody's new place with the shortest ways, as build_tools/paths/starting.py and
// nearest_places.py find it.
(() => {
  const { floor } = window.danceUnitBank.sums;
  const ROUNDS = 12;

  // the middle of some points
  floor.among = (points) => [0, 1].map((at) => points.reduce((sum, point) => sum + point[at], 0) / points.length);
  floor.sized = (together) => together.map((group) => group.length);

  // each dancer's place, when each group takes the slot of the number that `takes` tells
  floor.byDancer = (groups, together, takes) => {
    const found = [];
    together.forEach((group, n) => group.forEach((dancer, at) => { found[dancer] = groups[takes[n]][at]; }));
    return found;
  };

  // 1, or by how much nearer all stand than the dance asks, or than an arm's length
  floor.closerThanAsked = ({ places, closer }, [, , , apart, between], { arm, step }) => {
    const said = [apart, between].filter((one) => (one ?? null) !== null).map((one) => one * step);
    const asked = Math.min(arm, ...said);
    const nearest = floor.nearestTwo(places);
    return Math.min(closer, nearest < asked ? nearest / asked : 1);
  };

  // each dancer's place so that the ways are short, groups of a size changing over whole, odd groups tried everywhere
  floor.shortest = ({ area, data }, at, standing, together) => {
    let best = null, least = null;
    for (const sizes of orders(floor.sized(together))) {
      const { groups, closer } = floor.slots(standing, sizes, area, data.step);
      const places = floor.byDancer(groups, together, takes(groups, together, at));
      const ways = places.reduce((sum, place, n) => sum + floor.metres(at[n], place), 0);
      const cost = [-floor.fine(Math.min(closer, floor.FITS)), floor.fine(ways)];
      if (!best || cost[0] < least[0] || (cost[0] === least[0] && cost[1] < least[1])) [best, least] = [{ places, closer }, cost];
    }
    return best;
  };

  // the sizes with those that are not the commonest in other places, as build_tools/paths/starting.py tries them
  function orders(sizes) {
    const many = sizes.length;
    const usual = floor.commonest(sizes);
    const odd = sizes.filter((one) => one !== usual);
    const found = [sizes];
    const put = (places) => {
      const order = sizes.map((_, n) => (places.includes(n) ? odd[places.indexOf(n)] : usual));
      if (order.some((one, n) => one !== sizes[n])) found.push(order);
    };
    if (odd.length === 2) {
      for (let one = 0; one < many; one += 1) for (let other = one + 1; other < many; other += 1) put([one, other]);
    } else if (odd.length) {
      for (let n = 0; n + odd.length <= many; n += 1) put(odd.map((_, k) => n + k));
    }
    return found;
  }

  // the slot of each group, those of a size in the slots of that size that are nearest; in order where nobody is anywhere
  // yet
  const takes = (floor.takes = (groups, together, at) => {
    const found = [];
    for (const size of [...new Set(floor.sized(together))].sort((a, b) => a - b)) {
      const free = [...groups.keys()].filter((n) => groups[n].length === size);
      const ours = [...together.keys()].filter((n) => together[n].length === size);
      if (!at) {
        ours.forEach((n, k) => { found[n] = free[k]; });
        continue;
      }
      const middles = ours.map((n) => floor.among(together[n].map((one) => at[one])));
      const nearest = nearestPlaces(middles, free.map((n) => floor.among(groups[n])));
      ours.forEach((n, k) => { found[n] = free[nearest[k]]; });
    }
    return found;
  });

  function nearestPlaces(from, places) {
    const far = from.map((one) => places.map((place) => floor.fine(floor.metres(one, place))));
    const least = far.map((row) => Math.min(...row));
    const free = new Set(places.keys());
    const taken = [];
    for (const one of [...from.keys()].sort((a, b) => least[b] - least[a] || a - b)) {
      const place = [...free].reduce((best, p) => (far[one][p] < far[one][best] ? p : best));
      taken[one] = place;
      free.delete(place);
    }
    for (let round = 0, changed = true; changed && round < ROUNDS; round += 1) {
      changed = false;
      for (let one = 0; one < from.length; one += 1) {
        for (let other = one + 1; other < from.length; other += 1) {
          const [a, b] = [taken[one], taken[other]];
          if (far[one][b] + far[other][a] < far[one][a] + far[other][b] - 1e-9) {
            [taken[one], taken[other]] = [b, a];
            changed = true;
          }
        }
      }
    }
    return taken;
  }
})();
