#!/usr/bin/env python3
"""How long a scan takes, beside what OpenCV and scikit-image take for less of it.

    target/check/venv/bin/python bench/scan/speed.py SPINNEY SCAN.png SCAN.jpg

Everything on one core, in turns, nine times, the median. OpenCV decodes the file, finds Otsu's
threshold of its grey values and traces the outlines; scikit-image is given those pixels and finds
six basic properties of each region (area, perimeter, both axes, hull, eccentricity). Spinney is a
whole process each time: it starts, decodes, measures and writes. Memory is the most that the
process had.
"""

import os
import pathlib
import statistics
import subprocess
import sys
import tempfile
import time

import cv2
import numpy as np
from skimage import measure

RUNS = 9
PROPERTIES = ["area", "perimeter", "major_axis_length", "minor_axis_length", "solidity", "eccentricity"]


def of_opencv(path):
    begin = time.perf_counter()
    pixels = cv2.imread(str(path), cv2.IMREAD_COLOR)
    grey = cv2.cvtColor(pixels, cv2.COLOR_BGR2GRAY)
    _, mask = cv2.threshold(grey, 0, 255, cv2.THRESH_BINARY_INV + cv2.THRESH_OTSU)
    outlines, _ = cv2.findContours(mask, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    took = time.perf_counter() - begin
    assert sum(cv2.contourArea(outline) > 10_000 for outline in outlines) >= 1
    return took, mask


def of_skimage(mask):
    begin = time.perf_counter()
    regions = measure.label(mask > 0)
    table = measure.regionprops_table(regions, properties=PROPERTIES)
    assert max(table["area"]) > 10_000
    return time.perf_counter() - begin


def of_spinney(program, path, *more):
    begin = time.perf_counter()
    child = subprocess.Popen([program, "measure", path, "--format", "csv", *more], stdout=subprocess.PIPE)
    rows = child.stdout.read().count(b"\n") - 1
    _, status, used = os.wait4(child.pid, 0)
    assert status == 0 and rows >= 1, (status, rows)
    return time.perf_counter() - begin, used.ru_maxrss / 1024


def main():
    program, *scans = sys.argv[1:]
    os.sched_setaffinity(0, {0})
    cv2.setNumThreads(1)
    print("scan | OpenCV, outlines | scikit-image, six properties | Spinney, all measures | with overlay and cut-outs | memory")
    for path in map(pathlib.Path, scans):
        took = {name: [] for name in ["opencv", "skimage", "all", "overlay"]}
        most = 0
        for _ in range(RUNS):
            seconds, mask = of_opencv(path)
            took["opencv"].append(seconds)
            took["skimage"].append(of_skimage(mask))
            seconds, memory = of_spinney(program, path)
            took["all"].append(seconds)
            most = max(most, memory)
            with tempfile.TemporaryDirectory() as folder:
                seconds, memory = of_spinney(program, path, "--out", f"{folder}/out")
                took["overlay"].append(seconds)
                most = max(most, memory)
        middle = {name: statistics.median(times) for name, times in took.items()}
        times = " | ".join(
            f"{1000 * middle[name]:.0f} ms ({middle[name] / middle['opencv']:.2f} x)" for name in took
        )
        print(f"{path.name} | {times} | {most:.0f} MiB")


if __name__ == "__main__":
    main()
