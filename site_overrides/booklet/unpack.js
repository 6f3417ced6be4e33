// Lays the booklet's lessons out: they are held small in the page, and stand in full on their own pages.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const held = document.querySelector("[data-packed]:not([data-started])");
  const places = document.querySelectorAll("[data-bound]");
  const buttons = () => document.querySelectorAll(".print-here button");

  bank.unpacked = held ? start() : Promise.resolve();

  async function start() {
    held.dataset.started = "";
    try {
      const bytes = Uint8Array.from(atob(held.dataset.packed), (letter) => letter.charCodeAt(0));
      const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
      // the first sections of all lessons, then the second ones, …
      const parts = (await new Response(stream).text()).split("\0");
      places.forEach((place, n) => { place.innerHTML = parts.filter((_, k) => k % places.length === n).join(""); });
      held.remove();
      // a link into a lesson was followed before the lesson was there
      document.getElementById(decodeURIComponent(location.hash.slice(1)))?.scrollIntoView();
    } catch (error) {
      console.error("unpack:", error);
      for (const button of buttons()) button.hidden = true;
    }
    document.documentElement.toggleAttribute("data-unpacked", true);
  }
})();
