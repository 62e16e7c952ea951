### Where a table is weak, and what to go and look at next.

weak-kinds = { $count ->
    [one] 1 kind
   *[other] { $count } kinds
}
weak-columns = { $count ->
    [one] 1 column
   *[other] { $count } columns
}
weak-pairs = { $count ->
    [one] 1 pair of kinds
   *[other] { $count } pairs of kinds
}
weak-too-many = { $kinds } and { $columns }: too many to compare each kind with each.
weak-smaller = Make a smaller table for one place and one group of kinds.
weak-nothing-to-tell = { $kinds }: there is nothing to tell apart.
weak-all = { $kinds }, { $columns }, { $pairs }: { $distances }.
weak-alike-count = { $count ->
    [one] 1 cannot be told apart
   *[other] { $count } cannot be told apart
}
weak-differ = { $count ->
    [one] 1 differs in { $columns }
   *[other] { $count } differ in { $columns }
}
weak-differ-too = { $count } in { $columns }
weak-alike = Not told apart yet
weak-fragile = Told apart by one column only
weak-next = Go and look next
weak-once = The fewest columns
weak-twice = If one answer may be wrong

weak-new-difference = Nothing tells these apart, so look for a new difference: { $pairs }.
weak-one-blank = One more cell filled in could tell these apart (see below): { $pairs }.
weak-several-blanks = Only several cells filled in could tell these apart: { $pairs }.
weak-none-fragile = None. Every pair differs in two columns or more.
weak-none-fragile-but = None. Every other pair differs in two columns or more.
weak-only = Only “{ $column }” tells { $pairs }.
weak-wrong-kind = { $count ->
    [one] One wrong answer there ends at the wrong kind. Look for a second difference.
   *[other] One wrong answer there ends at the wrong kind. Look for a second difference for each.
}
weak-nothing-needed = Nothing is needed.
weak-no-blank = No blank cell would help. Look for a new difference and add it as a column.
weak-more-blanks = { $count ->
    [one] 1 more blank cell could help as well (--next { $all } names them).
   *[other] { $count } more blank cells could help as well (--next { $all } names them).
}
weak-look = { $place }. { $column } of { $kind }: { $could }.
weak-look-tells = could tell it from { $kinds }
weak-look-with-others = with other blanks, could tell it from { $kinds }
weak-look-second = could be a second difference from { $kinds }

weak-no-column = No column tells two of these kinds apart.
weak-all-needed = { $count ->
   *[other] All { $count } columns are needed to tell all kinds apart: leave out any one of them, and two kinds can no longer be told apart.
}
weak-all-needed-but = { $count ->
   *[other] All { $count } columns are needed to tell apart whatever the whole table can: leave out any one of them, and two kinds can no longer be told apart.
}
weak-set-tells = { $count ->
    [one] The column { $columns } alone tells all kinds apart.
   *[other] These { $count } columns alone tell all kinds apart: { $columns }.
}
weak-set-tells-but = { $count ->
    [one] The column { $columns } alone tells apart whatever the whole table can.
   *[other] These { $count } columns alone tell apart whatever the whole table can: { $columns }.
}
weak-sets-tell = { $count ->
    [one] One column alone tells all kinds apart, any of these:
   *[other] { $count } columns alone tell all kinds apart: { $with }:
}
weak-sets-tell-but = { $count ->
    [one] One column alone tells apart whatever the whole table can, any of these:
   *[other] { $count } columns alone tell apart whatever the whole table can: { $with }:
}
weak-any = any of these choices
weak-always = { $columns }, and any of these choices
weak-choice = - { $columns }
weak-choice-others = - and others
weak-choice-more = - and { $count } more
weak-proved = Proved: fewer cannot do it.
weak-not-proved = Not proved: at least { $least } are needed, and with { $best } it can be done. A larger --budget goes on.
weak-indispensable = { $count ->
    [one] Indispensable is { $columns }.
   *[other] Indispensable are { $columns }.
}

weak-no-two = No pair differs in two columns: every wrong answer goes unnoticed.
weak-every-pair = every pair
weak-every-pair-but-alike = every pair but those still alike
weak-every-pair-but-above = every pair but those above
weak-all-for-two = It takes all { $columns } columns to show two differences in { $which }.
weak-set-shows-two = { $count ->
    [one] The column { $columns } shows two differences in { $which }.
   *[other] These { $count } columns show two differences in { $which }: { $columns }.
}
weak-sets-show-two = { $count ->
    [one] One column shows two differences in { $which }, any of these:
   *[other] { $count } columns show two differences in { $which }: { $with }:
}
weak-notice = Whoever looks at all of them will notice one wrong answer.
weak-notice-but = Whoever looks at all of them will notice one wrong answer, but for those pairs.
weak-pair-from = { $one } from { $others }
weak-and-more-pairs = { $count ->
    [one] and 1 more pair
   *[other] and { $count } more pairs
}
weak-noticed = Noticed in reading the table
