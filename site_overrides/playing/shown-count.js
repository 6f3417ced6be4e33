// Which moment of the sound is heard now: what the audio clock has sent out, less the way to the speaker.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const counts = (bank.counts ||= {});
  const MOST = 1; // seconds; anything longer is a mistake of the device

  // `now` in milliseconds on the page's own clock. Never ahead of the audio clock.
  counts.heardTime = (context, now) => {
    const delay = context.outputLatency || context.baseLatency || 0;
    const plain = context.currentTime - Math.min(MOST, Math.max(0, delay));
    const stamp = context.getOutputTimestamp ? context.getOutputTimestamp() : null;
    if (!stamp || !(stamp.contextTime > 0) || !(stamp.performanceTime > 0)) return plain;
    const heard = stamp.contextTime + (now - stamp.performanceTime) / 1000;
    return heard <= context.currentTime && heard > context.currentTime - MOST ? heard : plain;
  };
})();
