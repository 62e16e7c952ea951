### Why each question is asked where it is, and what others would cost.

explain-only = No other key is as good.
explain-other-questions = { $keys } keys are as good; they make the same heaps, by other questions that tell the same kinds apart.
explain-other-heaps = { $keys } keys are as good, each with other heaps.
explain-some-other-heaps = { $keys } keys are as good; { $others } of them make other heaps, the rest ask something else that tells the same kinds apart.
explain-next-as-good = Key { $place } of those that make other heaps: as good as the best
explain-next = Key { $place } of those that make other heaps: { $questions } more per find
explain-not-to-the-end = Not looked at to the end: there may be others between these.
explain-here = { $count } kinds are left here: { $heaps }.
explain-both-ways = { $count ->
    [one] 1 goes both ways
   *[other] { $count } go both ways
}
explain-also = A second look that separates them in the same way: { $questions }
explain-opposite = { $question } (no where this is yes)
explain-instead = Instead, with the rest of the key as good as can be:
explain-blocked = Cannot be asked yet, because of a kind still here: { $list }.
explain-nothing-else = Nothing else can be asked of all of them here.
explain-wanted-dear = You wanted this question here; another would be cheaper.
explain-wanted = You wanted this question here; none is cheaper.
explain-first-in-table = Others do as well. This one comes first in the table.
explain-even = It divides the heap more evenly than the others, or as evenly and more easily.
explain-uneven = “{ $question }” would divide the heap more evenly, but the key as a whole would take longer: it is harder to see, or what it leaves is harder to tell apart.
explain-not-by-touch = “{ $question }” That would save { $questions } per find, but children would have to touch, and { $kinds } may be in the hand.
explain-more-kinds = { $count ->
    [one] one more kind with a caution
   *[other] { $count } more kinds with a caution
}
explain-other = { $question } – { $costs } ({ $heaps })
explain-costs-same = costs the same
explain-saves = saves { $questions } per find
explain-costs = costs { $questions } more per find
explain-costs-at-least = costs at least { $questions } more per find
explain-may-save = may save up to { $questions } per find; not looked at to the end
