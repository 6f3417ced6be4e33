// Only in the preview: where on the page a text of the file stands, also in the page's quotation
// marks, with a full stop or a capital of the page's own, or behind a word of the page's.
(() => {
  const preview = window.danceUnitPreview;
  const { made, plain } = preview;

  const BLOCK = "p, li, dd, dt, h1, h2, h3, h4, td, th, figcaption, summary, caption, blockquote, div, section, main, body";
  const SKIPPED = "#preview-bar, dialog, .preview-step, .preview-more, .preview-mark, .preview-text, script, style, svg, select, button";
  const FEW_WORDS = 4;
  // letter by letter as long as it was: every quotation mark alike, and every space
  const alike = (text) => text.replace(/["'“”‘’«»]/g, "'").replace(/\s/g, " ").toLowerCase();

  // The pieces of a block's own text; what no text can run through stands for a break.
  function piecesOf(block) {
    const nodes = [];
    let said = "";
    const walker = document.createTreeWalker(block, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const around = node.parentElement;
      const mine = around.closest(BLOCK) === block && !around.closest(SKIPPED);
      nodes.push({ node, from: said.length });
      said += mine ? alike(node.data) : "\n".repeat(node.data.length);
    }
    return { nodes, said };
  }

  // Whether what stands there can be the whole of what a field says.
  function isWhole(said, at, end, words) {
    const before = said.slice(0, at).trimEnd();
    const after = said.slice(end).trimStart();
    // a sentence with a full stop of its own may have another of the page's behind it
    const stops = /[.!?]$/.test(said.slice(at, end)) && /^\s/.test(said.slice(end));
    if (after && !stops && !/^[\n.;'!?)·,]/.test(after)) return false;
    if (!before || /[\n:;'(·.!?]$/.test(before)) return !/^,/.test(after) || words >= FEW_WORDS;
    return words >= FEW_WORDS && /\s$/.test(said.slice(0, at));
  }

  function find({ nodes, said }, text) {
    const wanted = alike(plain(text));
    // a text begins where a text of the page does, or behind what the page says before it
    for (let at = said.indexOf(wanted); at >= 0; at = said.indexOf(wanted, at + 1)) {
      const end = at + wanted.length;
      const holds = (place) => nodes.findLast(({ from }) => from <= place);
      const [first, last] = [holds(at), holds(end - 1)];
      const apart = !said.slice(first.from, at).trim() && !said.slice(end, last.from + last.node.data.length).trim();
      if (!apart && !isWhole(said, at, end, wanted.split(" ").length)) continue;
      // what is a way to elsewhere from end to end is no text to be changed
      if (first.node === last.node && first.node.parentElement.closest("a")) continue;
      const range = document.createRange();
      range.setStart(first.node, at - first.from);
      range.setEnd(last.node, end - last.from);
      return range;
    }
    return null;
  }

  // The part of the page that is about the step, or about looking and talking.
  function roomOf(path, body) {
    if (path[0] === "steps") return body.querySelectorAll(".lesson .step")[path[1]] || null;
    return path[0] === "look_and_talk" ? body.querySelector(".lesson .talk") : null;
  }

  const least = (field) => (/answers/.test(field.path.join()) ? 2 : 3);

  // Each text of the file that stands on the page, put in an element of its own, with its field.
  preview.sentences = (fields, body) => {
    const found = [];
    const known = new Map();
    const pieces = (block) => known.get(block) || known.set(block, piecesOf(block)).get(block);
    const blocks = [...new Set([body, ...body.querySelectorAll(BLOCK)])];
    const key = (field) => alike(plain(field.text));
    const shared = (field, near) =>
      fields.some((one) => one !== field && key(one) === key(field) && roomOf(one.path, body) === near);
    // the longest first: a shorter one may stand in it
    for (const field of [...fields].sort((one, other) => other.text.length - one.text.length)) {
      if (plain(field.text).length < least(field)) continue;
      const near = roomOf(field.path, body);
      // a text that two fields share could be either, unless each stands in a part of its own
      if (shared(field, near)) continue;
      const alone = !fields.some((one) => one !== field && key(one) === key(field));
      const inside = near ? blocks.filter((block) => near.contains(block)) : blocks;
      const tries = near && alone ? [inside, blocks] : [inside];
      for (const held of tries) {
        const before = found.length;
        for (const block of held) {
          for (let range = find(pieces(block), field.text); range; range = find(pieces(block), field.text)) {
            const element = made("span", { className: "preview-text" });
            element.append(range.extractContents());
            range.insertNode(element);
            // what was known of the blocks around it is not so any more
            for (const around of known.keys()) if (around.contains(element)) known.delete(around);
            found.push({ element, field });
          }
        }
        if (found.length > before) break;
      }
    }
    return found;
  };
})();
