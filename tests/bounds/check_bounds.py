#!/usr/bin/env python3
"""Whatever 16 MB say, there is an answer or a problem within the bounds of time and memory.

check_bounds.py PROGRAM [--seconds N] [--megabytes N] [--only WORD] [--sample] [--times]
The processor's time is counted, not the clock's, so that a busy machine changes nothing.
"""

import argparse
import os
import pathlib
import resource
import subprocess
import sys
import tempfile

import hostile_files
import hostile_lists

CASES = [hostile_files.texts, hostile_files.many_ingredients,
         hostile_files.at_all_bounds, hostile_files.above_all_bounds,
         hostile_files.misspelt_names,
         hostile_files.chain, hostile_files.diamonds, hostile_lists.price_lists,
         hostile_lists.logs, hostile_lists.worksheets, hostile_lists.fractions,
         hostile_lists.events, hostile_lists.own_rows]


# Of each kind of input the command that took longest before it was mended.
SAMPLE = ["check brackets.yaml", "cost empty_lines.yaml", "check marks_in_many.yaml",
          "cost one_wrong_at_the_end.yaml", "check event.yaml", "check r0.yaml", "quote r0x0.yaml", "cost recipe.yaml",
          "check units.yaml",
          "check kinds.yaml", "quote crowd.yaml", "prices unmatched.yaml",
          "lethality rising.csv --food meat", "check steps.yaml", "check shares.yaml"]


def run(program, words, folder, seconds, megabytes):
    """What is wrong with how the command ended, if anything; its time and memory."""
    def limit():
        resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds + 1))
        if megabytes:
            resource.setrlimit(resource.RLIMIT_AS, (megabytes << 20, megabytes << 20))
        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))

    with tempfile.TemporaryFile() as said, tempfile.TemporaryFile() as printed:
        process = subprocess.Popen([program, *words], cwd=folder, stdin=subprocess.DEVNULL,
                                   stdout=printed, stderr=said, preexec_fn=limit)
        _, status, usage = os.wait4(process.pid, 0)
        process.returncode = 0
        said.seek(0)
        complaint = said.read(100_000).decode(errors="replace")
    spent = usage.ru_utime + usage.ru_stime
    code = status >> 8 if status & 127 == 0 else -(status & 127)
    wrong = ""
    if code not in (0, 1, 2):
        wrong = f"ended with {code}"
    elif code != 0 and "problem " not in complaint and "error" not in complaint:
        wrong = "gave up without a problem: " + complaint[:200]
    return wrong, spent, usage.ru_maxrss / 1024, code, complaint.split("\n")[0]


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("--seconds", type=int, default=10)
    parser.add_argument("--megabytes", type=int, default=512)
    parser.add_argument("--only", default="")
    parser.add_argument("--sample", action="store_true")
    parser.add_argument("--times", action="store_true")
    options = parser.parse_args()
    program = str(pathlib.Path(options.program).resolve())
    tried, bad = 0, 0
    for case in CASES:
        if options.only not in case.__name__:
            continue
        with tempfile.TemporaryDirectory() as name:
            folder = pathlib.Path(name)
            for words in case(folder):
                if options.sample and " ".join(words) not in SAMPLE:
                    continue
                tried += 1
                wrong, spent, memory, code, first = run(program, words, folder, options.seconds,
                                                 options.megabytes)
                if wrong or options.times:
                    print(f"{case.__name__}: {' '.join(words)}: {spent:.2f} s, {memory:.0f} MB, "
                          f"{code} {wrong} | {first}", flush=True)
                bad += bool(wrong)
    print(f"{tried} commands, {bad} out of bounds")
    return 1 if bad or tried == 0 else 0


if __name__ == "__main__":
    sys.exit(main())
