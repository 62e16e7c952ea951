"""Leaves in pictures, measured by what we did not write: closed forms, scikit-image, OpenCV.

The pictures are drawn here, with numpy, from formulas whose areas and outlines are known, and laid
on noisy paper; or they are cut-out photographs of plants whose alpha channel is the true mask
(Debian's package tuxpaint-stamps-default, folder plants, fetched by ./check and never shipped).
"""

import json
import pathlib
import subprocess
import sys
import tempfile

import cv2
import numpy as np
from PIL import Image
from skimage import filters, measure

SPINNEY = pathlib.Path(sys.argv[1]).resolve()
STAMPS = pathlib.Path(__file__).resolve().parents[2] / "target/check/stamps"
DPI = 300
MM = 25.4 / DPI
#: Points a pixel is asked at, each way.
FINE = 4
LEAF = (92, 128, 60)


def light(value):
    """sRGB to light, as IEC 61966-2-1 nearly has it: a power of 2.2."""
    return (np.asarray(value, float) / 255) ** 2.2


def laid_on_paper(cover, colour, seed):
    """A picture: `cover` of 0 to 1 in `colour`, on paper that is darker to one side, with noise."""
    height, width = cover.shape
    down, right = np.mgrid[0:height, 0:width]
    paper = np.stack(
        [246 - 6 * down / height, 245 - 5 * right / width, np.full(cover.shape, 240.0)], -1
    )
    mixed = light(paper) * (1 - cover[..., None]) + light(colour) * cover[..., None]
    noise = np.random.default_rng(seed).normal(0, 2.5, mixed.shape)
    return np.clip(255 * mixed ** (1 / 2.2) + noise, 0, 255).astype(np.uint8)


def measured(pixels):
    """What Spinney says of a picture at 300 dpi."""
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "scan.png"
        Image.fromarray(pixels).save(path, dpi=(DPI, DPI))
        run = subprocess.run(
            [SPINNEY, "measure", path, "--format", "json"], capture_output=True, timeout=120
        )
    assert run.returncode == 0, run.stderr.decode()
    return json.loads(run.stdout)["pictures"][0]


# --- shapes whose measures are known -----------------------------------------------------------


def outline_of(radius):
    """Around r(angle), in mm: a polygon of 20,000 points."""
    angle = np.linspace(0, 2 * np.pi, 20000, endpoint=False)
    r = radius(angle)
    return np.stack([r * np.cos(angle), r * np.sin(angle)], -1)


def ellipse(half_length, half_width):
    def radius(angle):
        return half_length * half_width / np.hypot(
            half_width * np.cos(angle), half_length * np.sin(angle)
        )

    return outline_of(radius)


def rose(middle, out, lobes):
    """r = a + b cos(n angle), area pi (a^2 + b^2 / 2)."""
    return outline_of(lambda angle: middle + out * np.cos(lobes * angle))


def reuleaux(width):
    """Three arcs, each around the corner across: perimeter pi w, area (pi - sqrt 3) w^2 / 2."""
    corners = [
        width / np.sqrt(3) * np.array([np.cos(turn), np.sin(turn)])
        for turn in (np.pi / 2, np.pi / 2 + 2 * np.pi / 3, np.pi / 2 + 4 * np.pi / 3)
    ]
    arcs = []
    for at in range(3):
        middle, begin, end = corners[at], corners[(at + 1) % 3], corners[(at + 2) % 3]
        first = np.arctan2(*(begin - middle)[::-1])
        turn = np.linspace(0, np.pi / 3, 6000, endpoint=False)
        arcs.append(middle + width * np.stack([np.cos(first + turn), np.sin(first + turn)], -1))
        assert np.allclose(np.hypot(*(end - middle)), width)
    return np.concatenate(arcs)


def area(points):
    x, y = points.T
    return abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1))) / 2


def perimeter(points):
    return np.hypot(*(np.roll(points, -1, 0) - points).T).sum()


def hull(points):
    return cv2.convexHull(points.astype(np.float32)).reshape(-1, 2)


#: Name, outline in mm, and what closed forms say of it: area, and perimeter where there is one.
SHAPES = [
    ("ellipse", ellipse(30, 14), np.pi * 30 * 14, None),
    ("rose of five", rose(20, 4, 5), np.pi * (20**2 + 4**2 / 2), None),
    ("rose of nine", rose(18, 2, 9), np.pi * (18**2 + 2**2 / 2), None),
    ("reuleaux", reuleaux(38), (np.pi - np.sqrt(3)) * 38**2 / 2, np.pi * 38),
]
TURNS = (0.0, 0.4, 1.1)


def cover_of(points):
    """How much of each pixel lies inside, asked at 4 x 4 points; and a border around."""
    border = 12.0
    pixels = (points - points.min(0) + border) / MM
    width, height = np.ceil(pixels.max(0) + border / MM).astype(int)
    fine = np.zeros((height * FINE, width * FINE), np.uint8)
    # cv2 counts from the middle of a pixel, and takes 1/256 of one.
    there = np.round((pixels * FINE - 0.5) * 256).astype(np.int32)
    cv2.fillPoly(fine, [there], 1, shift=8)
    return fine.reshape(height, FINE, width, FINE).mean((1, 3))


def turned(points, by):
    turn = np.array([[np.cos(by), -np.sin(by)], [np.sin(by), np.cos(by)]])
    return points @ turn.T


def whole(leaf, what):
    """A measure's value and its plus-minus."""
    found = [one for one in leaf["measures"] if one["what"] == what]
    assert len(found) == 1 and "value" in found[0], (what, leaf["measures"])
    return found[0]["value"], found[0]["plus_minus"]


def test_shapes_have_the_measures_of_their_closed_forms():
    """Beside what scikit-image finds on Otsu's mask of the same picture."""
    ours, theirs = {"area": [], "perimeter": [], "solidity": []}, {"area": [], "perimeter": []}
    for name, points, known_area, known_perimeter in SHAPES:
        assert abs(area(points) / known_area - 1) < 1e-4, name
        if known_perimeter:
            assert abs(perimeter(points) / known_perimeter - 1) < 1e-4, name
        for seed, by in enumerate(TURNS):
            there = turned(points, by)
            pixels = laid_on_paper(cover_of(there), LEAF, seed)
            picture = measured(pixels)
            assert len(picture["leaves"]) == 1, (name, by, picture["left_out"])
            leaf = picture["leaves"][0]
            full = area(points) / area(hull(points))
            for what, truth, key in [
                ("blade area", known_area, "area"),
                ("blade perimeter", perimeter(points), "perimeter"),
                ("solidity", full, "solidity"),
            ]:
                value, off = whole(leaf, what)
                assert abs(value - truth) <= off, f"{name} turned {by}: {what} {value} for {truth}"
                ours[key].append(abs(value / truth - 1))
            grey = cv2.cvtColor(pixels, cv2.COLOR_RGB2GRAY)
            mask = grey < filters.threshold_otsu(grey)
            region = max(measure.regionprops(measure.label(mask)), key=lambda one: one.area)
            theirs["area"].append(abs(region.area * MM**2 / known_area - 1))
            theirs["perimeter"].append(
                abs(region.perimeter_crofton * MM / perimeter(points) - 1)
            )
    said = ", ".join(
        f"{key} {np.median(ours[key]):.2%} (scikit-image {np.median(errors):.2%})"
        for key, errors in theirs.items()
    )
    print(f"     (off by {said})")
    for key, limit in [("area", 0.003), ("perimeter", 0.005), ("solidity", 0.003)]:
        assert max(ours[key]) < limit, (key, max(ours[key]))
    # A pixel's share is worth more along the outline than inside it.
    assert np.median(ours["perimeter"]) <= np.median(theirs["perimeter"]), said


def test_an_ellipse_is_as_long_and_wide_as_opencvs_smallest_rectangle():
    for seed, by in enumerate(TURNS):
        pixels = laid_on_paper(cover_of(turned(ellipse(30, 14), by)), LEAF, seed)
        leaf = measured(pixels)["leaves"][0]
        grey = cv2.cvtColor(pixels, cv2.COLOR_RGB2GRAY)
        _, mask = cv2.threshold(grey, 0, 255, cv2.THRESH_BINARY_INV + cv2.THRESH_OTSU)
        contours, _ = cv2.findContours(mask, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
        _, sides, _ = cv2.minAreaRect(max(contours, key=cv2.contourArea))
        # Its contour runs through the middles of border pixels: a pixel too short each way.
        length, width = (side * MM + MM for side in sorted(sides, reverse=True))
        for what, other, truth in [("blade length", length, 60), ("blade width", width, 28)]:
            value, _ = whole(leaf, what)
            assert abs(value / truth - 1) < 0.01, f"turned {by}: {what} {value} for {truth}"
            assert abs(value / other - 1) < 0.015, f"turned {by}: {what} {value}, OpenCV {other}"


# --- plants that were cut out by hand ----------------------------------------------------------


def plants():
    """Name, colours and cover of each plant that is large enough; none where there are no stamps."""
    for path in sorted(STAMPS.rglob("*.png")):
        rgba = np.asarray(Image.open(path).convert("RGBA")).astype(float)
        if max(rgba.shape[:2]) < 150:
            continue
        room = ((90, 90), (90, 90), (0, 0))
        rgba = np.pad(rgba, room)
        yield path.stem, rgba[..., :3], rgba[..., 3] / 255


def filled(mask):
    """The largest piece of a mask, without its holes."""
    contours, _ = cv2.findContours(
        mask.astype(np.uint8), cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE
    )
    alone = np.zeros(mask.shape, np.uint8)
    cv2.drawContours(alone, [max(contours, key=cv2.contourArea)], -1, 1, -1)
    return alone.astype(bool)


def shared(one, other):
    """What two masks share, over what either has."""
    return (one & other).sum() / (one | other).sum()


def test_plants_are_outlined_as_they_were_cut_out():
    """As well as Otsu's threshold of OpenCV does, or better, and none is missed."""
    if not STAMPS.is_dir():
        print("     (no stamps here: not tried)")
        return
    ours, otsus = [], []
    for seed, (name, colours, cover) in enumerate(plants()):
        pixels = laid_on_paper(cover, colours, seed)
        truth = filled(cover >= 0.5)
        best = 0.0
        for leaf in measured(pixels)["leaves"]:
            drawn = np.zeros(truth.shape, np.uint8)
            outline = np.round(np.array(leaf["outline"]) * 256).astype(np.int32)
            cv2.fillPoly(drawn, [outline], 1, shift=8)
            best = max(best, shared(drawn.astype(bool), truth))
        grey = cv2.cvtColor(pixels, cv2.COLOR_RGB2GRAY)
        _, mask = cv2.threshold(grey, 0, 255, cv2.THRESH_BINARY_INV + cv2.THRESH_OTSU)
        ours.append(best)
        otsus.append(shared(filled(mask), truth))
        assert best > 0.7, f"{name}: {best:.3f} of it"
    print(f"     ({len(ours)} plants: {np.median(ours):.3f} shared, Otsu {np.median(otsus):.3f})")
    assert len(ours) >= 20, len(ours)
    assert np.median(ours) >= 0.96, sorted(ours)
    assert np.mean(ours) >= np.mean(otsus), (np.mean(ours), np.mean(otsus))
