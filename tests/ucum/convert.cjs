// Converts one of a unit into another, by the UCUM reference library: convert.cjs FOLDER QUESTIONS,
// where FOLDER holds the library's package and each line of QUESTIONS is `CODE CODE`. Prints a number
// or what is wrong for each line.
"use strict";

const fs = require("fs");
const path = require("path");

const [folder, questions] = process.argv.slice(2);
const { UcumLhcUtils } = require(path.resolve(folder, "node_modules/@lhncbc/ucum-lhc"));
const ucum = UcumLhcUtils.getInstance();

const answers = [];
for (const line of fs.readFileSync(questions, "utf8").split("\n")) {
  if (line === "") continue;
  const [from, to] = line.split(" ");
  const result = ucum.convertUnitTo(from, 1, to);
  answers.push(result.status === "succeeded" ? String(result.toVal) : "refused: " + result.msg);
}
process.stdout.write(answers.join("\n") + "\n");
