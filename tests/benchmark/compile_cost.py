#!/usr/bin/env python3
"""What it costs to compile a client, beside the headers of others that it reads.

compile_cost.py [--build build/dev] [--compiler g++] [--flags "-O0"] [--times 5]

Two clients of the install tests, one of core's quantities and one of all floors, each with the bodies
compiled and with all in headers; and what they read of Boost and the standard library alone. The
processor's time, the least of several, and how many times the headers alone it is. For reading:
no test.
"""

import argparse
import pathlib
import re
import resource
import subprocess
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[2]
CLIENTS = {"core": "core/client.cpp", "all floors": "headers/client.cpp"}
WAYS = {"compiled": [], "in headers": ["-DPLATEWRIGHT_HEADER_ONLY"]}


def seconds(words, times):
    """The processor's time of a command, user's and system's, the least of some."""
    least = None
    for _ in range(times):
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        subprocess.run(words, check=True)
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        took = after.ru_utime - before.ru_utime + after.ru_stime - before.ru_stime
        least = took if least is None else min(least, took)
    return least


def outside_includes(words, source):
    """The include lines for headers of others, in what a source reads of the project, itself too."""
    listed = subprocess.run([*words, "-M", source], check=True, capture_output=True, text=True)
    lines = set()
    for file in listed.stdout.replace("\\\n", " ").split()[1:]:
        path = pathlib.Path(file)
        if path == source or "platewright" in path.parts:
            found = re.findall(r"^#include <[^>]+>", path.read_text(), re.MULTILINE)
            lines.update(line for line in found if "<platewright/" not in line)
    return sorted(lines)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--build", type=pathlib.Path, default=ROOT / "build/dev")
    parser.add_argument("--compiler", default="g++")
    parser.add_argument("--flags", default="-O0")
    parser.add_argument("--times", type=int, default=5)
    options = parser.parse_args()
    words = [options.compiler, "-std=c++20", *options.flags.split(), f"-I{ROOT / 'include'}",
             f"-I{options.build / 'generated/include'}"]
    with tempfile.TemporaryDirectory() as folder:
        made = ["-c", "-o", f"{folder}/made.o"]
        alone = pathlib.Path(folder) / "alone.cpp"
        print(f"{'client':12}{'bodies':12}{'seconds':>8}{'headers of others alone':>26}{'times':>7}")
        for client, name in CLIENTS.items():
            source = ROOT / "tests/install/clients" / name
            for way, defined in WAYS.items():
                includes = outside_includes([*words, *defined], source)
                alone.write_text("\n".join([*includes, "int main() {}", ""]))
                others = seconds([*words, *made, alone], options.times)
                whole = seconds([*words, *defined, *made, source], options.times)
                print(f"{client:12}{way:12}{whole:8.2f}{others:26.2f}{whole / others:7.2f}",
                      flush=True)


if __name__ == "__main__":
    main()
