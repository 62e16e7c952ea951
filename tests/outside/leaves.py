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
import pyefd
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


def test_harmonics_are_those_of_pyefd():
    """Kuhl and Giardina's coefficients, of a form that looks different from every side."""
    drop = outline_of(lambda angle: 22 + 5 * np.cos(angle) + 3 * np.cos(2 * angle + 0.5) + np.sin(3 * angle))
    off = []
    for seed, by in enumerate(TURNS):
        leaf = measured(laid_on_paper(cover_of(turned(drop, by)), LEAF, seed))["leaves"][0]
        outline = np.array(leaf["outline"] + leaf["outline"][:1])
        theirs = pyefd.elliptic_fourier_descriptors(outline, order=10, normalize=True)
        ours = np.array(leaf["harmonics"])
        # Begun at the other end of the first ellipse, every second harmonic is turned over; seen from
        # the other side of it, every one is. Both are the same form.
        second = np.where(np.arange(10) % 2 == 1, -1.0, 1.0)[:, None]
        ways = [theirs, -theirs, second * theirs, -second * theirs]
        off.append(min(np.abs(ours - way).max() for way in ways))
    print(f"     (off by {max(off):.4f} of the first harmonic)")
    assert max(off) < 0.005, off


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


# --- photographs of the printed scale card, through OpenCV's camera -----------------------------


#: So many pixels is a photograph wide and high.
PHOTOGRAPH = (2000, 1500)
#: Turn and tilt in degrees, the lens's first term, and how far away the camera is, in mm.
CAMERAS = [
    (2, 0, 0.0, 330),
    (90, 8, -0.08, 330),
    (181, 15, 0.05, 345),
    (275, 20, -0.12, 350),
    (30, 25, -0.05, 430),
    (320, 25, 0.08, 430),
]
#: The middle of the rings, in mm on the paper.
AIMED_AT = (105, 176)
#: Ellipses that lie on the card: their middles in mm on the paper, half length, half width, turn.
ON_CARD = [
    ((62, 118), 30, 13, 0.3), ((140, 125), 26, 16, 1.3), ((100, 165), 21, 11, 2.2),
    ((55, 205), 28, 14, 0.9), ((150, 205), 31, 12, 1.7), ((103, 235), 24, 12, 0.1),
]


def card_with_leaves(pdf, seed):
    """The sheet as the press made it, rasterised by poppler, with leaves on it; in light."""
    raster = subprocess.run(
        ["pdftoppm", "-r", str(DPI), "-png", "-singlefile", pdf],
        capture_output=True, check=True,
    ).stdout
    sheet = cv2.cvtColor(cv2.imdecode(np.frombuffer(raster, np.uint8), 1), cv2.COLOR_BGR2RGB)
    world = light(np.minimum(sheet, 243))
    for middle, half_length, half_width, turn in ON_CARD:
        there = turned(ellipse(half_length, half_width), turn) + middle
        fine = np.zeros((sheet.shape[0] * 2, sheet.shape[1] * 2), np.uint8)
        cv2.fillPoly(
            fine, [np.round((there / MM * 2 - 0.5) * 256).astype(np.int32)], 255, shift=8
        )
        cover = cv2.resize(fine, sheet.shape[1::-1], interpolation=cv2.INTER_AREA) / 255
        colour = light(np.add(LEAF, np.random.default_rng(seed).integers(-25, 25, 3)))
        world = world * (1 - cover[..., None]) + colour * cover[..., None]
    return world


def photographed(world, turn, tilt, lens, away, seed):
    """The card on a brown table, seen by a camera: OpenCV's lens, uneven light, blur, noise, JPEG."""
    width, height = (2 * side for side in PHOTOGRAPH)
    focal = 1.05 * width
    camera = np.array([[focal, 0, width / 2], [0, focal, height / 2], [0, 0, 1]])
    across, down = np.meshgrid(np.arange(width, dtype=np.float32), np.arange(height, dtype=np.float32))
    pixels = np.stack([across, down], -1).reshape(-1, 1, 2)
    rays = cv2.undistortPoints(pixels, camera, np.array([lens, 0, 0, 0], float)).reshape(-1, 2)
    tilted, _ = cv2.Rodrigues(np.array([np.radians(tilt), 0, 0]))
    round_, _ = cv2.Rodrigues(np.array([0, 0, np.radians(turn)]))
    # From the paper (mm, the middle of the rings at 0) to the camera: turned, tilted, and so far away.
    pose = tilted @ round_
    plane = np.column_stack([pose[:, 0], pose[:, 1], [0, 0, away]])
    seen = np.column_stack([rays, np.ones(len(rays))]) @ np.linalg.inv(plane).T
    mm = seen[:, :2] / seen[:, 2:] + AIMED_AT
    places = (mm / MM - 0.5).astype(np.float32).reshape(height, width, 2)
    table = tuple(float(part) for part in light((120, 88, 60)))
    shot = cv2.remap(
        world.astype(np.float32), places, None, cv2.INTER_LINEAR,
        borderMode=cv2.BORDER_CONSTANT, borderValue=table,
    )
    shot = cv2.GaussianBlur(cv2.resize(shot, PHOTOGRAPH, interpolation=cv2.INTER_AREA), (0, 0), 0.7)
    down, across = np.mgrid[0 : PHOTOGRAPH[1], 0 : PHOTOGRAPH[0]]
    shot = shot * (1 - 0.25 * across / PHOTOGRAPH[0] - 0.1 * down / PHOTOGRAPH[1])[..., None]
    noise = np.random.default_rng(seed).normal(0, 2, shot.shape)
    return np.clip(255 * np.maximum(shot, 0) ** (1 / 2.2) + noise, 0, 255).astype(np.uint8)


def of_photograph(pixels):
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "photograph.jpg"
        Image.fromarray(pixels).save(path, quality=88)
        run = subprocess.run(
            [SPINNEY, "measure", path, "--format", "json"], capture_output=True, timeout=120
        )
    assert run.returncode == 0, run.stderr.decode()
    return json.loads(run.stdout)["pictures"][0]


def test_leaves_on_a_photographed_scale_card_have_their_lengths():
    """The printed sheet seen askew: each ellipse is as long, wide and large as it was drawn."""
    pdf = pathlib.Path(sys.argv[2]) / "hedge_walk/best/scale-card.pdf"
    off = {"blade length": [], "blade width": [], "blade area": []}
    for seed, (turn, tilt, lens, away) in enumerate(CAMERAS):
        pixels = photographed(card_with_leaves(pdf, seed), turn, tilt, lens, away, seed)
        picture = of_photograph(pixels)
        assert picture["scale"] == "scale card", (turn, tilt, picture["scale"])
        found = sorted(picture["leaves"], key=lambda leaf: whole(leaf, "blade area")[0])
        drawn = sorted(ON_CARD, key=lambda leaf: leaf[1] * leaf[2])
        assert len(found) == len(drawn), (turn, tilt, len(found), picture["left_out"])
        for leaf, (_, half_length, half_width, _) in zip(found, drawn):
            for what, truth in [
                ("blade length", 2 * half_length),
                ("blade width", 2 * half_width),
                ("blade area", np.pi * half_length * half_width),
            ]:
                value, plus_minus = whole(leaf, what)
                off[what].append(abs(value / truth - 1))
                assert abs(value - truth) <= plus_minus, (turn, tilt, what, value, truth)
    said = ", ".join(f"{what} {np.median(each):.2%} (worst {max(each):.2%})" for what, each in off.items())
    print(f"     (off by {said})")
    for what, limit in [("blade length", 0.02), ("blade width", 0.02), ("blade area", 0.03)]:
        assert max(off[what]) < limit, said
