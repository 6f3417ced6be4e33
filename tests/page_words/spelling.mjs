// Of the words on standard input, one a line, those that the dictionary does not know, one a line.
// Each line may hold several words; a line is known if any of them is.
import { readFileSync } from "node:fs";
import nspell from "nspell";

const file = (end) => readFileSync(new URL(`../../node_modules/dictionary-cy/index.${end}`, import.meta.url));
const dictionary = nspell(file("aff"), file("dic"));
const lines = readFileSync(0, "utf8").split("\n").filter(Boolean);
const unknown = lines.filter((line) => !line.split(" ").some((word) => dictionary.correct(word)));
process.stdout.write(unknown.map((line) => `${line}\n`).join(""));
