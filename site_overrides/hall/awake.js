// Keeps the screen awake where the device can, and asks again when the page is seen again.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const hall = (bank.hall ||= {});
  let wanted = false, watching = false, lock = null;

  // Gives whether the screen stays awake. A device that cannot, or will not, is no fault.
  hall.awake = async (want) => {
    wanted = want;
    if (!watching) {
      watching = true;
      document.addEventListener("visibilitychange", ask);
    }
    return ask();
  };

  async function ask() {
    if (!wanted) {
      const held = lock;
      lock = null;
      if (held) await held.release();
      return false;
    }
    if (!navigator.wakeLock || document.visibilityState !== "visible") return false;
    if (lock && !lock.released) return true;
    try {
      lock = await navigator.wakeLock.request("screen");
      return true;
    } catch {
      return false;
    }
  }
})();
