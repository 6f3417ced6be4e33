// A score from a place in it on: what is left of the stretch that is danced, and what follows.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const dance = (bank.dance ||= {});

  // `stretches` as the player takes them; `count` counts of the first are already danced
  dance.from = (stretches, count) => {
    const [first, ...rest] = stretches;
    if (!count || first.counts === undefined) return stretches;
    const heard = (first.heard || []).filter((piece) => piece.to > count).map((piece) => moved(piece, count));
    return [{ ...first, counts: first.counts - count, heard }, ...rest];
  };

  function moved(piece, count) {
    const back = (place) => place - count;
    const found = { ...piece, from: Math.max(0, back(piece.from)), to: back(piece.to) };
    for (const name of ["strokes", "loud"]) found[name] = (piece[name] || []).map(back).filter((place) => place >= 0);
    if (piece.says) found.says = piece.says.map(([place, word]) => [back(place), word]).filter(([place]) => place >= 0);
    return found;
  }
})();
