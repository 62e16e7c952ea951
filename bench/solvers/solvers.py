"""General-purpose solvers that look for decision trees, each asked for a key.

From a table of 0 and 1 to what was found: effort of the tree, whether it was proved, seconds.
All are general-purpose; none was made for keys. Every kind is a class of its own with one row.

* pystreed (van der Linden, de Weerdt, Demirovic, "Necessary and sufficient conditions for optimal
  decision trees using dynamic programming", NeurIPS 2023): cost-sensitive task, a test costs the
  steps of its question, a wrong class far more than any key. It searches trees up to a depth.
* OR-tools CP-SAT with a straightforward model: a full binary tree of a depth, a question for each
  node, and which kinds come there.
* pydl8.5 (Aglin, Nijssen, Schaus, AAAI 2020) minimises errors, not steps: it only answers whether
  a tree of a depth exists that errs on no kind.
* scikit-learn's DecisionTreeClassifier, greedy by entropy: fast, proves nothing.

Seconds are those of the processor, so that whatever else runs beside does not count. Each run has
a process of its own, warmed up on a small table, which the kernel ends after a limit.
"""

import multiprocessing
import resource
import signal
import warnings

import numpy as np
from ortools.sat.python import cp_model
from pydl85 import DL85Classifier
from pystreed import STreeDCostSensitiveClassifier
from pystreed.data import CostSpecifier, FeatureCostSpecifier
from sklearn.tree import DecisionTreeClassifier

warnings.filterwarnings("ignore")
DEEPEST_OF_PYSTREED = 20
NO_LIMIT = 1e6  # the solvers' own limits are on the clock of the wall


def limited(solver, limit, table, *rest):
    """What a solver answers and its seconds; None and the limit where it did not finish."""
    ours, theirs = multiprocessing.Pipe(duplex=False)
    run = multiprocessing.get_context("fork").Process(
        target=_alone, args=(theirs, solver, limit, table, rest)
    )
    run.start()
    theirs.close()
    try:
        return ours.recv()
    except EOFError:
        run.join()
        stopped = run.exitcode in (-signal.SIGXCPU, -signal.SIGKILL)
        assert stopped, f"{solver.__name__} broke down on {table.name}"
        return None, limit


def _alone(pipe, solver, limit, table, rest):
    solver(Square(), *rest)
    before = processor(resource.RUSAGE_SELF)
    # Whole seconds only: one more rather than one less.
    last = int(before + limit) + 1
    resource.setrlimit(resource.RLIMIT_CPU, (last, last))
    answer = solver(table, *rest)
    pipe.send((answer, processor(resource.RUSAGE_SELF) - before))


def processor(whose):
    """Seconds of the processor. (The clock of a process falls to ticks under a limit.)"""
    used = resource.getrusage(whose)
    return used.ru_utime + used.ru_stime


class Square:
    """Four kinds, two questions: libraries load and settle on their first table."""

    rows = [(0, 0), (0, 1), (1, 0), (1, 1)]
    steps = [1, 1]


def streed(table, depth):
    """The least effort of a tree up to this depth, proved."""
    kinds = len(table.rows)
    cells, names = np.array(table.rows), np.arange(kinds)
    wrong = 1000.0 * kinds
    costs = CostSpecifier(
        [[0.0 if a == b else wrong for b in range(kinds)] for a in range(kinds)],
        # What a test costs, and what it costs once one of its group was made: none shares one.
        [
            FeatureCostSpecifier(float(steps), float(steps), f"g{at}", at, at)
            for at, steps in enumerate(table.steps)
        ],
    )
    depth = min(depth, DEEPEST_OF_PYSTREED)
    model = STreeDCostSensitiveClassifier(max_depth=depth, time_limit=NO_LIMIT)
    model.fit(cells, names, costs)
    assert (model.predict(cells) == names).all(), "a tree that deep tells all kinds apart"
    assert model.fit_result.is_optimal(), "it stopped by itself"
    return walked(model.tree_, table)


def walked(tree, table):
    """The effort of a tree of pystreed, added up by walking every kind through it."""
    effort = 0
    for row in table.rows:
        node = tree
        while node.is_branching_node():
            effort += table.steps[node.feature]
            node = node.right_child if row[node.feature] else node.left_child
    return effort


def cp_sat(table, depth):
    """The least effort of a tree up to this depth, proved; with making the model."""
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    status = solver.solve(full_tree(table, depth))
    assert status == cp_model.OPTIMAL, solver.status_name(status)
    return round(solver.objective_value)


def full_tree(table, depth):
    """Node i leads to 2i + 1 by yes and to 2i + 2 by no."""
    kinds, characters, nodes = range(len(table.rows)), range(len(table.steps)), 2**depth - 1
    model = cp_model.CpModel()
    asks = [[model.new_bool_var("") for _ in characters] for _ in range(nodes)]
    here = [[model.new_bool_var("") for _ in kinds] for _ in range(2 * nodes + 1)]
    model.add_bool_and(here[0])
    efforts = []
    for node in range(nodes):
        model.add_at_most_one(asks[node])
        for k in kinds:
            sides = here[2 * node + 1][k], here[2 * node + 2][k]
            for side in sides:
                model.add_implication(side, here[node][k])
                model.add_bool_or([~side, *asks[node]])
            for q in characters:
                goes, misses = sides if table.rows[k][q] else sides[::-1]
                model.add_bool_or([~asks[node][q], ~here[node][k], goes])
                model.add_implication(asks[node][q], ~misses)
            for other in range(k):
                model.add_bool_or([~here[node][k], ~here[node][other], *asks[node]])
        effort = model.new_int_var(0, len(kinds) * max(table.steps), "")
        for q in characters:
            model.add(effort >= table.steps[q] * sum(here[node])).only_enforce_if(asks[node][q])
        efforts.append(effort)
    for leaf in range(nodes, 2 * nodes + 1):
        model.add_at_most_one(here[leaf])
    model.minimize(sum(efforts))
    return model


def without_error(table, depth):
    """Whether pydl8.5 finds a tree of this depth that errs on no kind.

    Without its short cut for depth two: with it, 0.1.8 misses trees that are there when there
    are many classes (the drawn table skewed-8x8-1 has one of depth 4).
    """
    model = DL85Classifier(max_depth=depth, depth_two_special_algo=False)
    model.fit(np.array(table.rows), np.arange(len(table.rows)))
    return model.error_ == 0


def greedy_tree(table):
    """Effort of scikit-learn's tree. It cannot be told what a question costs."""
    cells = np.array(table.rows)
    model = DecisionTreeClassifier(criterion="entropy", random_state=0)
    model.fit(cells, np.arange(len(cells)))
    nodes = model.tree_.feature
    path = model.decision_path(cells).toarray()
    return int(
        sum(table.steps[nodes[at]] for row in path for at in np.flatnonzero(row) if nodes[at] >= 0)
    )
