// Asked again and again, as reading the dictionary takes two seconds: for each list of lines that
// comes in, in a line of JSON, a list goes out of those whose words the dictionary does not know.
// A line may hold several words; it is known if any of them is.
import { readFileSync } from "node:fs";
import { createInterface } from "node:readline";
import nspell from "nspell";

const file = (end) => readFileSync(new URL(`../../node_modules/dictionary-cy/index.${end}`, import.meta.url));
const dictionary = nspell(file("aff"), file("dic"));
const known = (line) => line.split(" ").some((word) => dictionary.correct(word));
for await (const asked of createInterface({ input: process.stdin }))
  process.stdout.write(`${JSON.stringify(JSON.parse(asked).filter((line) => !known(line)))}\n`);
