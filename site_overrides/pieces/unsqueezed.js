// A text that a page holds small: LZMA as the format's own description has it ("LZMA specification", 2015), without a
// header and with a mark at its end, written in letters (base 85, RFC 1924) of which four give way to attributes.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz!#$%,()*+-;:=.?@^_/{|}~";
  const LITERAL_BITS = 3; // of the letter before, which say how a letter is told; a place says nothing
  const STATES = 12, ALIGNED = 4, FIRST_LONG = 4, FIRST_FAR = 14, LEAST = 2;

  bank.unsqueezed = (letters) => new TextDecoder().decode(laidOut(bytesOf(letters)));

  function bytesOf(letters) {
    const many = Math.floor((letters.length * 4) / 5);
    const bytes = new Uint8Array(Math.ceil(many / 4) * 4);
    for (let at = 0, to = 0; at < letters.length; at += 5) {
      let four = 0;
      for (let n = at; n < at + 5; n += 1) four = four * 85 + (n < letters.length ? LETTERS.indexOf(letters[n]) : 84);
      for (let n = 3; n >= 0; n -= 1, four = Math.floor(four / 256)) bytes[to + n] = four % 256;
      to += 4;
    }
    return bytes.subarray(0, many);
  }

  // what bits are likely: half and half to begin with, of 2048
  const even = (many) => new Uint16Array(many).fill(1024);

  function lengths() {
    return { long: even(2), low: even(8), middle: even(8), high: even(256) };
  }

  function laidOut(bytes) {
    let out = new Uint8Array(bytes.length * 8);
    let many = 0, at = 5, range = 0xffffffff;
    let code = ((bytes[1] << 24) | (bytes[2] << 16) | (bytes[3] << 8) | bytes[4]) >>> 0;
    const isMatch = even(STATES), isAgain = even(STATES), isNotLast = even(STATES);
    const isNotSecond = even(STATES), isNotThird = even(STATES), isLonger = even(STATES);
    const letter = even(0x300 << LITERAL_BITS);
    const slots = Array.from({ length: 4 }, () => even(64));
    const far = even(128), aligned = even(1 << ALIGNED);
    const fresh = lengths(), again = lengths();
    let state = 0, back = [0, 0, 0, 0];

    function bit(likely, n) {
      const bound = (range >>> 11) * likely[n];
      const is = code >= bound ? 1 : 0;
      if (is) {
        range -= bound;
        code -= bound;
        likely[n] -= likely[n] >>> 5;
      } else {
        range = bound;
        likely[n] += (2048 - likely[n]) >>> 5;
      }
      if (range < 0x1000000) more();
      return is;
    }

    function more() {
      range = (range << 8) >>> 0;
      code = ((code << 8) | (bytes[at++] ?? 0)) >>> 0;
    }

    function bitsEven(count) {
      let value = 0;
      for (; count; count -= 1) {
        range >>>= 1;
        const is = code >= range ? 1 : 0;
        if (is) code -= range;
        if (range < 0x1000000) more();
        value = value * 2 + is;
      }
      return value;
    }

    function tree(likely, count) {
      let n = 1;
      for (let left = count; left; left -= 1) n = n * 2 + bit(likely, n);
      return n - (1 << count);
    }

    function treeFromBelow(likely, first, count) {
      let n = 1, value = 0;
      for (let place = 0; place < count; place += 1) {
        const is = bit(likely, first + n);
        n = n * 2 + is;
        value |= is << place;
      }
      return value;
    }

    function lengthOf({ long, low, middle, high }) {
      if (!bit(long, 0)) return tree(low, 3);
      if (!bit(long, 1)) return 8 + tree(middle, 3);
      return 16 + tree(high, 8);
    }

    function distance(length) {
      const slot = tree(slots[Math.min(length, 3)], 6);
      if (slot < FIRST_LONG) return slot;
      const count = (slot >> 1) - 1;
      const value = (2 | (slot & 1)) * 2 ** count;
      if (slot < FIRST_FAR) return value + treeFromBelow(far, value - slot, count);
      return value + bitsEven(count - ALIGNED) * 2 ** ALIGNED + treeFromBelow(aligned, 0, ALIGNED);
    }

    function put(one) {
      if (many === out.length) {
        const larger = new Uint8Array(many * 2);
        larger.set(out);
        out = larger;
      }
      out[many++] = one;
    }

    function oneLetter() {
      const first = 0x300 * ((many ? out[many - 1] : 0) >> (8 - LITERAL_BITS));
      let n = 1;
      if (state >= 7) {
        let like = out[many - back[0] - 1];
        while (n < 0x100) {
          const hint = (like >> 7) & 1;
          like <<= 1;
          const is = bit(letter, first + ((1 + hint) << 8) + n);
          n = n * 2 + is;
          if (is !== hint) break;
        }
      }
      while (n < 0x100) n = n * 2 + bit(letter, first + n);
      put(n & 0xff);
      state = state < 4 ? 0 : state < 10 ? state - 3 : state - 6;
    }

    // one of the last four distances again, which then is the last
    function known() {
      if (!bit(isNotLast, state)) {
        if (!bit(isLonger, state)) {
          state = state < 7 ? 9 : 11;
          return 1;
        }
      } else {
        const n = !bit(isNotSecond, state) ? 1 : !bit(isNotThird, state) ? 2 : 3;
        back = [back[n], ...back.filter((_, k) => k !== n)];
      }
      const length = LEAST + lengthOf(again);
      state = state < 7 ? 8 : 11;
      return length;
    }

    for (;;) {
      if (!bit(isMatch, state)) {
        oneLetter();
        continue;
      }
      let length;
      if (bit(isAgain, state)) {
        length = known();
      } else {
        const told = lengthOf(fresh);
        state = state < 7 ? 7 : 10;
        back = [distance(told), ...back.slice(0, 3)];
        if (back[0] === 0xffffffff) return out.subarray(0, many);
        length = LEAST + told;
      }
      if (back[0] >= many) throw new RangeError("a text that is held small goes back before its beginning");
      for (; length; length -= 1) put(out[many - back[0] - 1]);
    }
  }
})();
